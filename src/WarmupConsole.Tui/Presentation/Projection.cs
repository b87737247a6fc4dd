using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tui.Presentation;

/// <summary>How long the whole warm-up will have taken if it goes on as it is, by the formula of <see cref="StepTiming"/>.</summary>
public static class Projection
{
    public static TimeSpan Whole(LiveSession session, Moment now)
    {
        TimeSpan spent = session.Clocks.WholeAt(now);
        if (session.State == LiveState.Finished)
        {
            return spent;
        }

        long later = session.Warmup.Steps.Skip(session.StepIndex + 1).Sum(step => step.Planned.Ticks);
        return spent + RestOfStep(session, now) + new TimeSpan(later);
    }

    private static TimeSpan RestOfStep(LiveSession session, Moment now) => (session.Step, session.State) switch
    {
        (null, _) => TimeSpan.Zero,
        ({ } step, LiveState.Ready) => step.Planned,
        ({ } step, LiveState.Introduce) => RestOfTalk(step, session.Clocks.StepAt(now)) + session.Tempo.DurationOf(Work(session, step)),
        ({ } step, _) => session.Tempo.DurationOf(Work(session, step) - Done(session, step, now)),
    };

    private static TimeSpan RestOfTalk(WarmupStep step, TimeSpan spent)
    {
        TimeSpan talk = TimeSpan.FromSeconds(step.TalkSeconds);
        return spent < talk ? talk - spent : TimeSpan.Zero;
    }

    private static Beats Work(LiveSession session, WarmupStep step) => step.Exercise.IsSung
        ? StepTiming.Cue + StepTiming.CountIn + (RungBeats(step) * session.Rungs.Count)
        : StepTiming.RoundBeats(step.Exercise) * step.Rounds;

    private static Beats Done(LiveSession session, WarmupStep step, Moment now) => step.Exercise.IsSung
        ? (RungBeats(step) * session.RungIndex) + DoneInRung(session, step, now)
        : (StepTiming.RoundBeats(step.Exercise) * session.RoundIndex)
            + Beats.FromBeats(step.Exercise.Phases.Take(session.PhaseIndex).Sum(phase => phase.Counts)) + InState(session, now);

    private static Beats DoneInRung(LiveSession session, WarmupStep step, Moment now)
    {
        Beats leadIn = StepTiming.Cue + StepTiming.CountIn;
        Beats pattern = step.Exercise.Pattern?.Length ?? Beats.Zero;
        return session.State switch
        {
            LiveState.Cue => InState(session, now),
            LiveState.CountIn => StepTiming.Cue + InState(session, now),
            LiveState.Rung => leadIn + InState(session, now),
            LiveState.Breath => leadIn + pattern + InState(session, now),
            _ => leadIn + RungBeats(step),
        };
    }

    /// <summary>Beats of the present state that have passed; a hold leads in again, so it counts none.</summary>
    private static Beats InState(LiveSession session, Moment now)
    {
        if (session.StateEnd is not { } end || session.Hold != Hold.None)
        {
            return Beats.Zero;
        }

        Beats passed = session.Timeline.BeatAt(now) - session.StateStart;
        Beats length = end - session.StateStart;
        return new(Math.Clamp(passed.Ticks, 0, Math.Max(0, length.Ticks)));
    }

    private static Beats RungBeats(WarmupStep step) => StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats);
}
