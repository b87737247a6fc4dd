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
        WarmupStep? before = transition.Source == LiveState.Ready ? null : Session.Step;
        holds.Release();
        if (transition.Trigger != LiveTrigger.TimeElapsed && Session.StateEnd is not null)
        {
            turn.Silence();
        }

        if (transition is { Source: LiveState.Introduce, Trigger: LiveTrigger.GoOn })
        {
            TellWhyPassedOver();
        }

        if (transition.Trigger == LiveTrigger.InsertNow)
        {
            Insert(transition.Source == LiveState.Ready ? 0 : PlaceBehind);
        }

        turn.Session = AtStep(Session, StepFrom(transition)) with
        {
            HasBegun = true,
            Clocks = Session.Clocks.At(turn.Now, running: true).NewStep(turn.Now),
        };
        if (Session.Step is { } step)
        {
            turn.Record(new StepStarted(Session.StepIndex, step.Exercise.Id, SessionKeys.Of(Session.Rungs)));
            turn.RecordTimeline(new(Session.Tempo, Beats.Zero, turn.Now));
        }
        else if (before is not null)
        {
            turn.Record(new StepsOver(Session.StepIndex - 1));
        }
    }

    /// <summary>Behind the present step; before the start, as the first one.</summary>
    public void InsertNext()
    {
        bool isFirst = Session.State == LiveState.Ready;
        Insert(isFirst ? 0 : PlaceBehind);
        turn.Session = isFirst ? AtStep(Session, Session.Order[0]) : Session;
    }

    /// <summary>Behind the present step, or where none is present, behind the last one.</summary>
    private int PlaceBehind => Session.Place < 0 ? Session.Order.Count : Session.Place + 1;

    private void Insert(int place)
    {
        LiveInput.Insert insert = (LiveInput.Insert)turn.Asked!;
        int number = Session.Warmup.Steps.Count;
        IReadOnlyList<int> order = [.. Session.Order.Take(place), number, .. Session.Order.Skip(place)];
        turn.Session = Session with { Warmup = Session.Warmup with { Steps = [.. Session.Warmup.Steps, insert.Step] }, ChangedOrder = order };
        turn.Record(new StepAdded(number, insert.Step.Exercise.Id, insert.ExerciseYaml));
        turn.Record(new OrderChanged(order, LiveTexts.PutIn));
        turn.Tell(LiveTexts.PutInNext(insert.Step.Exercise.Title));
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
            Rungs = step is null ? [] : session.LadderOf(index),
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
            BreathBeats = null,
            Style = null,
            Voicing = Voicing.AsPlanned,
            ProofAsked = false,
            KeyIsHeard = false,
            Hearing = null,
        };
    }

    private int StepFrom(Transition transition) => transition switch
    {
        { Trigger: LiveTrigger.InsertNow } => Session.Warmup.Steps.Count - 1,
        { Source: LiveState.Ready } => Session.Order.Count > 0 ? Session.Order[0] : 0,
        { Trigger: LiveTrigger.StepBack } => Session.PreviousStepIndex!.Value,
        _ => Session.NextStepIndex!.Value,
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
