namespace WarmupConsole.Sessions.Events;

/// <summary>A mark was kept.</summary>
/// <param name="Id">Its number in this session.</param>
/// <param name="Step">Index of the step it refers to.</param>
/// <param name="Rung">Index of the rung it refers to.</param>
/// <param name="Raw">What was typed; empty for a pin, which is put in words later or never.</param>
/// <param name="Parts">Ids of the parts named; empty for everyone or none.</param>
/// <param name="Kind">Id of the kind, or null for a free note.</param>
/// <param name="Key">Tonic in ASCII: the one named, else the anchor's; null in steps without keys.</param>
/// <param name="KeyNamed">True when the director named the key.</param>
/// <param name="Pitch">MIDI number named, or null.</param>
/// <param name="Place">Place in words, or empty.</param>
/// <param name="Nanoseconds">Monotonic time of its first letter; marks of one line have the same.</param>
/// <param name="Strength">How much of it, or empty when that was not said.</param>
public sealed record MarkMade(
    int Id,
    int Step,
    int Rung,
    string Raw,
    IReadOnlyList<string> Parts,
    string? Kind,
    string? Key,
    bool KeyNamed,
    int? Pitch,
    string Place,
    long Nanoseconds,
    string Strength = "") : SessionEvent;
