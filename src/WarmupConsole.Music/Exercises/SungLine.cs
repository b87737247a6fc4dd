using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>The sounding notes of a pattern, as demands and purposes look at them.</summary>
public sealed class SungLine
{
    /// <param name="pattern">Its rests take time and are no notes.</param>
    /// <param name="mode">The scale that its degrees refer to.</param>
    public SungLine(Pattern pattern, Mode mode)
    {
        List<SungNote> notes = [];
        (Beats start, string vowel) = (Beats.Zero, "");
        foreach (PatternNote note in pattern.Notes)
        {
            if (note.Degree is Degree degree)
            {
                vowel = note.Syllable?.Vowel ?? vowel;
                notes.Add(new(degree, ModeData.IntervalOf(mode, degree), start, note.Length, vowel));
            }

            start += note.Length;
        }

        Notes = notes;
        Length = start;
        Moves = [.. notes.Zip(notes.Skip(1), (from, to) => to.Interval + -from.Interval)];
    }

    /// <summary>The lines of an exercise; none in counted phases.</summary>
    public static IReadOnlyList<SungLine> AllOf(Exercise exercise) =>
        [.. exercise.Lines.Select(pattern => new SungLine(pattern, exercise.Mode))];

    /// <summary>In the order they are sung.</summary>
    public IReadOnlyList<SungNote> Notes { get; }

    /// <summary>From each note to the next, also over a rest.</summary>
    public IReadOnlyList<Interval> Moves { get; }

    /// <summary>With all rests.</summary>
    public Beats Length { get; }

    /// <summary>The longest stretch without a rest.</summary>
    public Beats LongestPhrase
    {
        get
        {
            (Beats longest, Beats present, Beats end) = (Beats.Zero, Beats.Zero, Beats.Zero);
            foreach (SungNote note in Notes)
            {
                present = note.Start == end ? present + note.Length : note.Length;
                end = note.End;
                longest = present > longest ? present : longest;
            }

            return longest;
        }
    }

    /// <summary>How many notes sound different pitches.</summary>
    public int PitchCount => Notes.Select(note => note.Interval.Semitones).Distinct().Count();

    /// <summary>The most notes that begin within any two beats.</summary>
    public int MostNotesInTwoBeats => Notes
        .Select(first => Notes.Count(note => note.Start >= first.Start && note.Start < first.Start + Beats.FromBeats(2)))
        .DefaultIfEmpty().Max();
}
