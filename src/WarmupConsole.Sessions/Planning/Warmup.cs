using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning;

/// <summary>A plan made ready for one choir. With no steps it is an open session: marks and timers only.</summary>
public sealed record Warmup(Choir Choir, Plan Plan, IReadOnlyList<WarmupStep> Steps)
{
    /// <summary>The sum of the steps.</summary>
    public TimeSpan Planned => new(Steps.Sum(step => step.Planned.Ticks));
}
