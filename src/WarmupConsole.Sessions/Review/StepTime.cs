namespace WarmupConsole.Sessions.Review;

/// <summary>How long a step took beside what was planned for it.</summary>
/// <param name="Title">The exercise.</param>
/// <param name="Planned">By the formula of the plan.</param>
/// <param name="Spent">All time from its introduction to the next step; zero for one that never began.</param>
public sealed record StepTime(string Title, TimeSpan Planned, TimeSpan Spent);
