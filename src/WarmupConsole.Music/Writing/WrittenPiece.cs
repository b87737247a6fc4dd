using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Writing;

/// <summary>A piece written out in beats from its beginning to its end: everything that a file of notes wants to know.</summary>
public sealed record WrittenPiece
{
    /// <summary>What it is called.</summary>
    public required string Title { get; init; }

    /// <summary>Sentences that belong to all of it; may be empty.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The first one at beat 0, if there is music at all.</summary>
    public required IReadOnlyList<Placed<Tempo>> Tempos { get; init; }

    /// <summary>Where the time signature changes.</summary>
    public required IReadOnlyList<Placed<Meter>> Meters { get; init; }

    /// <summary>Where the key changes.</summary>
    public required IReadOnlyList<Placed<Key>> Keys { get; init; }

    /// <summary>Places to go to.</summary>
    public required IReadOnlyList<Placed<string>> Markers { get; init; }

    /// <summary>The piano first.</summary>
    public required IReadOnlyList<WrittenTrack> Tracks { get; init; }

    /// <summary>From beginning to end.</summary>
    public required Beats Length { get; init; }
}
