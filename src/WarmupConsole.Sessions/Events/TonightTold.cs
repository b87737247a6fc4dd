namespace WarmupConsole.Sessions.Events;

/// <summary>What differs this evening was told, before the start; it replaces what was told before.</summary>
/// <param name="Parts">Ids of the parts that differ.</param>
/// <param name="Heads">How many of each came; −1 when nobody counted.</param>
/// <param name="Colds">Whether some of each have a cold.</param>
/// <param name="Tired">Whether each is tired.</param>
/// <param name="Energy">low, high, or usual.</param>
/// <param name="Raw">What was typed.</param>
public sealed record TonightTold(
    IReadOnlyList<string> Parts,
    IReadOnlyList<int> Heads,
    IReadOnlyList<bool> Colds,
    IReadOnlyList<bool> Tired,
    string Energy,
    string Raw) : SessionEvent;
