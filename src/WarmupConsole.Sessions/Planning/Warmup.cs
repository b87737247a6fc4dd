using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning;

/// <summary>A plan made ready for one choir. With no steps it is an open session: marks and timers only.</summary>
public sealed record Warmup(Choir Choir, Plan Plan, IReadOnlyList<WarmupStep> Steps)
{
    /// <summary>The choir without what differs tonight; <see cref="Choir"/> is who sings now.</summary>
    public Choir UsualChoir { get; init; } = Choir;

    public Tonight Tonight { get; init; } = Tonight.AsUsual;

    /// <summary>True without a plan: exercises are put in as it runs.</summary>
    public bool IsOpen => Plan.Steps.Count == 0;

    /// <summary>What the piano plays in a step: as the step says, else the plan, else the exercise, else as usual.</summary>
    public PianoPart PianoOf(WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Plan.Piano.Or(Plan.Piano).Or(step.Exercise.Piano).OrUsual();
    }

    /// <summary>The sum of the steps of the plan; of a run without one, of what was put in.</summary>
    public TimeSpan Planned => new(Steps.Take(IsOpen ? Steps.Count : Plan.Steps.Count).Sum(step => step.Planned.Ticks));
}
