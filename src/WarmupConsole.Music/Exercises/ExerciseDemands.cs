using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>What an exercise asks of a voice, whatever the key.</summary>
/// <param name="Low">From the tonic to the lowest note.</param>
/// <param name="High">From the tonic to the highest note.</param>
/// <param name="LargestLeapSemitones">The widest step between two notes that follow each other, also over a rest.</param>
/// <param name="LongestPhrase">The longest stretch without a rest: what one breath must carry.</param>
/// <param name="FirstVowel">IPA of the first syllable; empty when unknown.</param>
/// <param name="TopVowel">IPA of what is sung on the highest note when it first comes; empty when unknown.</param>
public sealed record ExerciseDemands(
    Interval Low,
    Interval High,
    int LargestLeapSemitones,
    Beats LongestPhrase,
    string FirstVowel,
    string TopVowel)
{
    /// <summary>Semitones from the lowest to the highest note.</summary>
    public int SpanSemitones => High.Semitones - Low.Semitones;

    /// <summary>The demands of a pattern in a mode.</summary>
    /// <exception cref="ArgumentException">The pattern has no sounding note.</exception>
    public static ExerciseDemands Of(Pattern pattern, Mode mode)
    {
        (PatternNote Note, Interval Interval)[] notes =
        [
            .. from note in pattern.Notes
               where note.Degree is not null
               select (note, ModeData.IntervalOf(mode, note.Degree!.Value)),
        ];
        if (notes.Length == 0)
        {
            throw new ArgumentException("The pattern has no sounding note.", nameof(pattern));
        }

        int highest = notes.Max(n => n.Interval.Semitones);
        int top = Array.FindIndex(notes, n => n.Interval.Semitones == highest);
        return new(
            notes.MinBy(n => n.Interval.Semitones).Interval,
            notes[top].Interval,
            notes.Zip(notes.Skip(1), (a, b) => Math.Abs(b.Interval.Semitones - a.Interval.Semitones)).DefaultIfEmpty().Max(),
            Longest(pattern),
            notes[0].Note.Syllable?.Vowel ?? "",
            notes[..(top + 1)].LastOrDefault(n => n.Note.Syllable is not null).Note?.Syllable?.Vowel ?? "");
    }

    private static Beats Longest(Pattern pattern)
    {
        (Beats longest, Beats present) = (Beats.Zero, Beats.Zero);
        foreach (PatternNote note in pattern.Notes)
        {
            present = note.Degree is null ? Beats.Zero : present + note.Length;
            longest = present > longest ? present : longest;
        }

        return longest;
    }
}
