namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What was led on a day, as its log says.</summary>
/// <param name="Day">The day.</param>
/// <param name="Exercises">Ids, in the order they were led.</param>
public sealed record LedSession(DateOnly Day, IReadOnlyList<string> Exercises);
