namespace WarmupConsole.Tui.Keys;

/// <summary>Something that a director often means to do, and the presses that do it.</summary>
/// <param name="Words">In the director's words.</param>
/// <param name="Presses">The keys in order, as the key table labels them, and letters that are typed.</param>
public sealed record Intention(string Words, IReadOnlyList<string> Presses);
