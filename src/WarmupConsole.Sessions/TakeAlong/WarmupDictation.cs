using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Writing;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.TakeAlong;

/// <summary>A warm-up while it is led and written down.</summary>
internal sealed class WarmupDictation
{
    private static readonly Beats Rest = Beats.FromBeats(4);

    private readonly PieceNotes notes;
    private LiveSession session;
    private Timeline timeline;
    private Moment now;

    /// <summary>Beats of the piece at the present moment, and at beat 0 of the present timeline.</summary>
    private Beats at;
    private Beats origin;

    internal WarmupDictation(Warmup warmup)
    {
        notes = new(warmup.Choir.Parts);
        session = LiveMachine.Start(warmup with { Plan = warmup.Plan with { Rolling = true } }, now).Session;
    }

    internal WrittenPiece Write(IReadOnlyList<string> remarks)
    {
        Lead();
        return notes.Piece(TakeAlongTexts.Title(session.Warmup), remarks, at);
    }

    private void Lead()
    {
        Send(new LiveInput.Act(LiveAction.GoOn));
        while (session.State != LiveState.Finished)
        {
            if (session.NextWake is { } wake)
            {
                now = wake;
                at = origin + timeline.BeatAt(wake);
                Send(new LiveInput.TimePassed());
            }
            else
            {
                BeginStep(session.Step!);
                Send(new LiveInput.Act(LiveAction.GoOn));
            }
        }
    }

    private void BeginStep(WarmupStep step)
    {
        if (step.Ladder.Rungs.Count == 0 && step.Exercise.Phases.Count == 0)
        {
            return;
        }

        if (at > Beats.Zero)
        {
            notes.Bars(at, Rest);
            at += Rest;
        }

        notes.Mark(at, TakeAlongTexts.Plain(TakeAlongTexts.Step(session.StepIndex, step)));
    }

    private void Send(LiveInput input)
    {
        LiveSession before = session;
        LiveOutcome outcome = LiveMachine.Handle(session, input, now);
        session = outcome.Session;
        foreach (LiveEffect effect in outcome.Effects)
        {
            Write(effect);
        }

        if (Place(before) != Place(session))
        {
            Enter(session.Step!, origin + session.StateStart);
        }
    }

    private static (LiveState, int, int, int, int) Place(LiveSession session) =>
        (session.State, session.StepIndex, session.RungIndex, session.RoundIndex, session.PhaseIndex);

    private void Write(LiveEffect effect)
    {
        switch (effect)
        {
            case LiveEffect.SetTimeline set:
                timeline = set.Timeline;
                origin = at - timeline.BeatAt(now);
                notes.Tempo(at, timeline.Tempo);
                break;
            case LiveEffect.Play play:
                notes.Piano(origin, play.Notes);
                break;
            case LiveEffect.Silence:
                notes.Silence(at);
                break;
        }
    }

    private void Enter(WarmupStep step, Beats start)
    {
        switch (session.State)
        {
            case LiveState.Cue:
                notes.Key(start, Key.Of(session.Rung!.Tonic, session.Rung.Mode));
                notes.Bars(start, StepTiming.Cue + StepTiming.CountIn);
                break;
            case LiveState.Rung:
                notes.Key(start, Key.Of(session.Rung!.Tonic, session.Rung.Mode));
                notes.Mark(start, TakeAlongTexts.Rung(session.StepIndex, step, session.Rung, session.Warmup.Choir.Notes));
                notes.Bars(start, step.Exercise.Pattern!.Length);
                notes.Sing(start, step.Exercise, session.Rung);
                break;
            case LiveState.Breath:
                notes.Bars(start, session.StateEnd!.Value - session.StateStart);
                break;
            case LiveState.Phase:
                notes.Mark(start, TakeAlongTexts.Plain(TakeAlongTexts.Phase(step.Exercise.Phases[session.PhaseIndex])));
                notes.Bars(start, session.StateEnd!.Value - session.StateStart);
                break;
        }
    }
}
