using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>Planned, spent and projected time of the present step and of the whole warm-up.</summary>
/// <param name="StepPlanned">Of the present step, by the plan.</param>
/// <param name="StepSpent">In the present step; stands still in a pause.</param>
/// <param name="StepProjected">Spent, and what remains of the ladder as it is now, at the present tempo.</param>
/// <param name="WholePlanned">Of all steps.</param>
/// <param name="WholeSpent">Since the first "go on".</param>
/// <param name="WholeProjected">Spent, what remains of the step, and the steps to come as they are now.</param>
public sealed record LiveTimers(
    TimeSpan StepPlanned,
    TimeSpan StepSpent,
    TimeSpan StepProjected,
    TimeSpan WholePlanned,
    TimeSpan WholeSpent,
    TimeSpan WholeProjected)
{
    /// <summary>The timers of a session at a moment.</summary>
    public static LiveTimers At(LiveSession session, Moment now)
    {
        ArgumentNullException.ThrowIfNull(session);
        TimeSpan step = session.Clocks.StepAt(now);
        TimeSpan whole = session.Clocks.WholeAt(now);
        TimeSpan left = StepLeft(session, now);
        TimeSpan later = session.State == LiveState.Finished
            ? TimeSpan.Zero
            : new(session.Order.Skip(session.Place + 1).Sum(next => session.Lasts(next).Ticks));
        return new(session.Step?.Planned ?? TimeSpan.Zero, step, step + left, session.Warmup.Planned, whole, whole + left + later);
    }

    private static TimeSpan StepLeft(LiveSession session, Moment now)
    {
        if (session.Step is not { } step || session.State == LiveState.Finished)
        {
            return TimeSpan.Zero;
        }

        return session.State switch
        {
            LiveState.Ready => step.Planned,
            LiveState.Introduce => TalkLeft(session, step, now) + session.Tempo.DurationOf(WorkLeft(session, step)) + Beyond(session, step),
            _ => session.Tempo.DurationOf(BeatsLeft(session, step, now)) + Beyond(session, step),
        };
    }

    /// <summary>What a tempo that changes from key to key makes of the keys to come.</summary>
    private static TimeSpan Beyond(LiveSession session, WarmupStep step) => step.Beyond(session.Tempo, session.TempoKey, session.Rungs.Count);

    private static TimeSpan TalkLeft(LiveSession session, WarmupStep step, Moment now)
    {
        TimeSpan left = TimeSpan.FromSeconds(step.TalkSeconds) - session.Clocks.StepAt(now);
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    }

    /// <summary>All of a step that has not begun: lead-in and rungs, or rounds.</summary>
    private static Beats WorkLeft(LiveSession session, WarmupStep step) => step.Exercise.IsSung
        ? LeadInAndRungs(session, step, session.RungIndex)
        : StepTiming.RoundBeats(step.Exercise) * step.Rounds;

    private static Beats BeatsLeft(LiveSession session, WarmupStep step, Moment now)
    {
        bool held = session.Hold != Hold.None;
        Beats passed = held || session.StateEnd is null ? Beats.Zero : session.Timeline.BeatAt(now) - session.StateStart;
        return session.State switch
        {
            LiveState.Phase => PhasesLeft(session, step) - passed,
            LiveState.Follow => Rungs(session, step, session.RungIndex),
            LiveState.Breath or LiveState.Wait when held => LeadInAndRungs(session, step, session.RungIndex + 1),
            _ when held => LeadInAndRungs(session, step, session.RungIndex),
            LiveState.Cue => LeadInAndRungs(session, step, session.RungIndex) - passed,
            LiveState.CountIn => StepTiming.CountIn + Rungs(session, step, session.RungIndex) - passed,
            LiveState.Rung => Rungs(session, step, session.RungIndex) - passed,
            _ => (session.StateEnd is { } end ? end - session.StateStart : Beats.FromBeats(step.Plan.BreathBeats)) + Rungs(session, step, session.RungIndex + 1) - passed,
        };
    }

    private static Beats LeadInAndRungs(LiveSession session, WarmupStep step, int from) =>
        session.Rungs.Count == 0 ? Beats.Zero : StepTiming.Cue + StepTiming.CountIn + Rungs(session, step, from);

    private static Beats Rungs(LiveSession session, WarmupStep step, int from) =>
        StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats) * Math.Max(0, session.Rungs.Count - from);

    private static Beats PhasesLeft(LiveSession session, WarmupStep step)
    {
        IReadOnlyList<BreathPhase> phases = step.Exercise.Phases;
        int rounds = step.Rounds - session.RoundIndex - 1;
        return Beats.FromBeats(phases.Skip(session.PhaseIndex).Sum(phase => phase.Counts)) + (StepTiming.RoundBeats(step.Exercise) * rounds);
    }
}
