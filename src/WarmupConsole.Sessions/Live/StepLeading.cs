using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using Transition = Stateless.StateMachine<WarmupConsole.Sessions.Live.LiveState, WarmupConsole.Sessions.Live.LiveTrigger>.Transition;

namespace WarmupConsole.Sessions.Live;

/// <summary>What happens on entering a step, a counted phase, and the end.</summary>
internal sealed class StepLeading(LiveTurn turn, LiveHolds holds)
{
    private LiveSession Session => turn.Session;

    public void Introduce(Transition transition)
    {
        holds.Release();
        if (transition.Trigger != LiveTrigger.TimeElapsed && Session.StateEnd is not null)
        {
            turn.Silence();
        }

        if (transition is { Source: LiveState.Introduce, Trigger: LiveTrigger.GoOn })
        {
            TellWhyPassedOver();
        }

        turn.Session = AtStep(Session, Session.StepIndex + StepsFrom(transition)) with
        {
            HasBegun = true,
            Clocks = Session.Clocks.At(turn.Now, running: true).NewStep(turn.Now),
        };
        if (Session.Step is { } step)
        {
            turn.Record(new StepStarted(Session.StepIndex, step.Exercise.Id, SessionKeys.Of(Session.Rungs)));
            turn.RecordTimeline(new(Session.Tempo, Beats.Zero, turn.Now));
        }
    }

    public void Phase(Transition transition)
    {
        (int round, int phase) = NextPhase(transition);
        bool isNewRound = phase == 0 && (round != Session.RoundIndex || transition.Source == LiveState.Introduce || transition.Trigger == LiveTrigger.Repeat);
        Beats begin = transition.Trigger == LiveTrigger.TimeElapsed ? Session.StateEnd!.Value : Beats.Zero;
        holds.Release();
        int counts = Session.Step!.Exercise.Phases[phase].Counts;
        turn.Session = Session with { RoundIndex = round, PhaseIndex = phase, StateStart = begin, StateEnd = begin + Beats.FromBeats(counts) };
        if (transition.Trigger != LiveTrigger.TimeElapsed)
        {
            turn.StartTimeline(begin);
        }

        if (isNewRound)
        {
            turn.Record(new RoundStarted(Session.StepIndex, round));
        }
    }

    public void Finish(Transition transition)
    {
        holds.Release();
        if (transition.Trigger == LiveTrigger.End)
        {
            turn.Silence();
        }
        else if (transition.Source == LiveState.Introduce)
        {
            TellWhyPassedOver();
        }

        turn.Session = Session with { StateEnd = null, CueAt = null, NextKeyCued = false, Clocks = Session.Clocks.At(turn.Now, running: false) };
        turn.Record(new RunEnded(transition.Trigger == LiveTrigger.End ? "ended" : "finished"));
    }

    /// <summary>A session in which a step is about to be introduced.</summary>
    public static LiveSession AtStep(LiveSession session, int index)
    {
        WarmupStep? step = index < session.Warmup.Steps.Count ? session.Warmup.Steps[index] : null;
        return session with
        {
            StepIndex = index,
            Rungs = step?.Ladder.Rungs ?? [],
            RungIndex = 0,
            RoundIndex = 0,
            PhaseIndex = 0,
            Tempo = step?.Tempo ?? session.Tempo,
            TempoKey = 0,
            StateStart = Beats.Zero,
            StateEnd = null,
            CueAt = null,
            NextKeyCued = false,
            WarnedBeyondExtreme = false,
        };
    }

    private static int StepsFrom(Transition transition) => transition switch
    {
        { Source: LiveState.Ready } => 0,
        { Trigger: LiveTrigger.StepBack } => -1,
        _ => 1,
    };

    private (int Round, int Phase) NextPhase(Transition transition)
    {
        if (transition.Source == LiveState.Introduce)
        {
            return (0, 0);
        }

        if (transition.Trigger == LiveTrigger.Repeat)
        {
            return (Session.RoundIndex, 0);
        }

        return Session.Hold != Hold.None ? (Session.RoundIndex, Session.PhaseIndex)
            : Session.PhaseIndex + 1 < Session.Step!.Exercise.Phases.Count ? (Session.RoundIndex, Session.PhaseIndex + 1)
            : (Session.RoundIndex + 1, 0);
    }

    private void TellWhyPassedOver()
    {
        if (Session.Step is { } step)
        {
            turn.Tell(LiveTexts.Skipped(step.Exercise.Title, step.Ladder.Reasons.Count > 0 ? string.Join(' ', step.Ladder.Reasons) : LiveTexts.NothingToLead));
        }
    }
}
