using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>What one line asks of a voice, whatever the key and the tempo; with a tempo see <see cref="ExerciseFigures"/>.</summary>
/// <param name="Low">From the tonic to the lowest note.</param>
/// <param name="High">From the tonic to the highest note.</param>
/// <param name="LargestLeapUpSemitones">The widest step upwards between two notes that follow each other, also over a rest; 0 when there is none.</param>
/// <param name="LargestLeapDownSemitones">The same downwards; 0 or more.</param>
/// <param name="LongestTone">The longest note.</param>
/// <param name="LongestPhrase">The longest stretch without a rest: what one breath must carry.</param>
/// <param name="FirstVowel">IPA of the first syllable; empty when unknown.</param>
/// <param name="TopDegree">The degree that is highest.</param>
/// <param name="TopVowel">IPA of what is sung on the highest note when it first comes; empty when unknown.</param>
public sealed record ExerciseDemands(
    Interval Low,
    Interval High,
    int LargestLeapUpSemitones,
    int LargestLeapDownSemitones,
    Beats LongestTone,
    Beats LongestPhrase,
    string FirstVowel,
    Degree TopDegree,
    string TopVowel)
{
    /// <summary>Semitones from the lowest to the highest note.</summary>
    public int SpanSemitones => High.Semitones - Low.Semitones;

    /// <summary>The widest step between two notes that follow each other, up or down.</summary>
    public int LargestLeapSemitones => Math.Max(LargestLeapUpSemitones, LargestLeapDownSemitones);

    /// <summary>The demands of a pattern in a mode.</summary>
    /// <exception cref="ArgumentException">The pattern has no sounding note.</exception>
    public static ExerciseDemands Of(Pattern pattern, Mode mode)
    {
        SungLine line = new(pattern, mode);
        if (line.Notes.Count == 0)
        {
            throw new ArgumentException("The pattern has no sounding note.", nameof(pattern));
        }

        SungNote top = line.Notes.MaxBy(note => note.Interval.Semitones);
        return new(
            line.Notes.MinBy(note => note.Interval.Semitones).Interval,
            top.Interval,
            line.Moves.Max(move => (int?)Math.Max(0, move.Semitones)) ?? 0,
            line.Moves.Max(move => (int?)Math.Max(0, -move.Semitones)) ?? 0,
            line.Notes.Max(note => note.Length),
            line.LongestPhrase,
            line.Notes[0].Vowel,
            top.Degree,
            top.Vowel);
    }
}
