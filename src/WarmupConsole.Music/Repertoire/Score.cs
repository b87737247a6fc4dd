using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire;

/// <summary>A piece as its notation says it: parts with notes, on one row of bars. Nothing is repeated; see <see cref="PlayedOrder"/>.</summary>
public sealed record Score
{
    /// <summary>The title, or empty.</summary>
    public required string Title { get; init; }

    /// <summary>In the order of the file.</summary>
    public required IReadOnlyList<ScorePart> Parts { get; init; }

    /// <summary>All bars.</summary>
    public required IReadOnlyList<ScoreBar> Bars { get; init; }

    /// <summary>In order of place; empty when the score names none.</summary>
    public required IReadOnlyList<TempoChange> Tempos { get; init; }

    /// <summary>The language of its words as the file names it ("la", "de-AT"), or empty.</summary>
    public string Language { get; init; } = "";

    /// <summary>From the beginning of the score to the beginning of a note.</summary>
    public Beats StartOf(PartNote note) => Bars[note.Bar].Start + note.Offset;

    /// <summary>The tempo at a place, or null before the first one that is written.</summary>
    public Tempo? TempoAt(int bar, Beats offset) =>
        Tempos.LastOrDefault(change => change.Bar < bar || (change.Bar == bar && change.Offset <= offset))?.Tempo;
}
