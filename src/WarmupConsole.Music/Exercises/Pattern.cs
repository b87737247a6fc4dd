using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>A line of scale degrees with durations, relative to a tonic; at least one sounding note.</summary>
public sealed record Pattern(IReadOnlyList<PatternNote> Notes)
{
    /// <summary>The sum of all lengths.</summary>
    public Beats Length => new(Notes.Sum(note => note.Length.Ticks));
}
