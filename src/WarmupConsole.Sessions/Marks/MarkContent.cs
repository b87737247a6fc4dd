using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Marks;

/// <summary>A mark as the grammar understood it. With neither parts nor kind it is a free note.</summary>
/// <param name="Raw">The whole line that was typed, unchanged; marks of one line have the same.</param>
/// <param name="PartIds">Canonical ids of the parts meant, in choir order; empty for everyone or when none was named.</param>
/// <param name="KindId">Canonical id of the kind, or null for a free note.</param>
/// <param name="Key">The key named after "in", octave ignored; null when the anchor's key is meant.</param>
/// <param name="Pitch">The pitch named after "at" or "on"; null when none was.</param>
/// <param name="Place">A place in words ("top", "coming down", "on the leap", "degree 5"), or empty.</param>
public sealed record MarkContent(
    string Raw,
    IReadOnlyList<string> PartIds,
    string? KindId,
    Pitch? Key,
    Pitch? Pitch,
    string Place)
{
    /// <summary>How much of it: one of <see cref="StrengthData.Words"/>, or empty when that was not said.</summary>
    public string Strength { get; init; } = "";

    /// <summary>True when it was kept as typed because no kind was recognised.</summary>
    public bool IsFreeNote => KindId is null;
}
