namespace WarmupConsole.Sessions.Review;

/// <summary>What was cut, as the warm-up ran late.</summary>
/// <param name="Step">Index in the plan, from 0.</param>
/// <param name="Title">Of its exercise, or the id when the exercise is unknown.</param>
/// <param name="IsWhole">True when the step was left out, false when its way back was.</param>
/// <param name="Saved">The time that was won, as reckoned then.</param>
public sealed record ReviewCut(int Step, string Title, bool IsWhole, TimeSpan Saved);
