using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>A line as it is sung in the key of a rung, in one octave: which pitch sounds when.</summary>
internal sealed class LineInKey
{
    private readonly List<(Beats Start, Beats End, int Midi)> _notes = [];

    internal LineInKey(Pattern pattern, Rung rung, int octaves)
    {
        Beats start = Beats.Zero;
        foreach (PatternNote note in pattern.Notes)
        {
            if (note.Degree is Degree degree)
            {
                _notes.Add((start, start + note.Length, rung.Tonic.Midi + (12 * octaves) + ModeData.IntervalOf(rung.Mode, degree).Semitones));
            }

            start += note.Length;
        }
    }

    /// <summary>MIDI number of the note that sounds at a beat, or null in a rest.</summary>
    internal int? At(Beats beat) => Find(note => note.Start <= beat && beat < note.End);

    /// <summary>MIDI number of the note that sounds up to a beat.</summary>
    internal int? Before(Beats beat) => Find(note => note.Start < beat && beat <= note.End);

    private int? Find(Predicate<(Beats Start, Beats End, int Midi)> wanted) => _notes.FindIndex(wanted) is >= 0 and int at ? _notes[at].Midi : null;
}
