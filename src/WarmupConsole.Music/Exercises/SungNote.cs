using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>A sounding note of a line, with what it carries over from before.</summary>
/// <param name="Degree">Its scale degree.</param>
/// <param name="Interval">From the tonic.</param>
/// <param name="Start">From the beginning of the line.</param>
/// <param name="Length">As written.</param>
/// <param name="Vowel">IPA of what is sung on it, carried on where it has no syllable of its own; empty when unknown.</param>
public readonly record struct SungNote(Degree Degree, Interval Interval, Beats Start, Beats Length, string Vowel)
{
    public Beats End => Start + Length;
}
