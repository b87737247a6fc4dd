using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Findings.Practice;

/// <summary>How often a purpose was served.</summary>
/// <param name="Purpose">Which.</param>
/// <param name="Steps">Steps led that serve it.</param>
/// <param name="Sessions">Sessions with such a step.</param>
/// <param name="Last">When last, or null when never.</param>
/// <param name="Since">Sessions after that one; all of them when never.</param>
public sealed record PurposePractice(Purpose Purpose, int Steps, int Sessions, DateTimeOffset? Last, int Since);
