namespace WarmupConsole.Sessions.Events;

/// <summary>A mark was made in the rehearsal behind the warm-up.</summary>
/// <param name="Raw">What was typed.</param>
/// <param name="Piece">The piece, or empty.</param>
/// <param name="Bars">Its bars, such as 12-15, or empty.</param>
/// <param name="Parts">Ids of the parts named; empty for everyone or none.</param>
/// <param name="Kind">Id of the kind, or null for a free note.</param>
/// <param name="Pitch">MIDI number named, or null.</param>
/// <param name="Place">Place in words, or empty.</param>
/// <param name="Nanoseconds">Monotonic time when it was kept.</param>
/// <param name="Strength">How much of it, or empty.</param>
public sealed record RehearsalMarked(
    string Raw,
    string Piece,
    string Bars,
    IReadOnlyList<string> Parts,
    string? Kind,
    int? Pitch,
    string Place,
    long Nanoseconds,
    string Strength = "") : SessionEvent;
