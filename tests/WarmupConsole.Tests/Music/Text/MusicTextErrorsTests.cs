using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Text;

/// <summary>What a director reads when a text cannot be read: what is wrong, what is allowed, what to do.</summary>
public class MusicTextErrorsTests
{
    private static readonly Pattern TwoNotes = PatternText.Parse("1 2").Value!;

    public static TheoryData<IReadOnlyList<TextError>, string> Rows => new()
    {
        {
            DegreeText.Parse("22").Errors,
            "'22' is no degree: write a number 1 to 21 (8 is the upper tonic), b or # before it if altered, a comma for each octave down; or do re mi fa so la ti with ' or , for octaves."
        },
        { PatternText.Parse(":2").Errors, "':2' is no note: write degree:beats, such as 5, b3:1/2 or 7,:2; - is a rest." },
        {
            PatternText.Parse("1:1/7").Errors,
            "'1/7' is no length: write beats as a whole number, a decimal or a fraction (2, 0.5, 1/3), more than 0 and at most 64, in whole 1/960 beats."
        },
        { PatternText.Parse("").Errors, "The pattern has no sounding note: write degrees separated by spaces, such as 1 2 3 4 5 4 3 2 1." },
        { PatternText.Parse(string.Join(' ', Enumerable.Repeat("1", 201))).Errors, "More than 200 notes: a warm-up pattern is shorter; repeat it in more keys instead." },
        { SyllableText.Apply(TwoNotes, "a b c").Errors, "3 syllables for 2 sounding notes: write one for each (~ carries the last one on), or a single one for all." },
        { SyllableText.Apply(TwoNotes, "").Errors, "There is no syllable: write one for each sounding note, such as noo/u ~ ~, or a single one for all." },
        { SyllableText.Apply(TwoNotes, "~ a").Errors, "'~' carries the last syllable on, but nothing stands before it: begin with a syllable, such as noo/u." },
        { SyllableText.Apply(TwoNotes, "a/ b").Errors, "'a/' is no syllable: write its text, and after / its vowel in IPA if known, such as noo/u; ~ carries the last one on." },
        {
            HarmonyText.Parse("Q").Errors,
            "'Q' is no chord: write I to VII (upper-case major, lower-case minor, o diminished), b or # before it if altered, 7 after it for the seventh, such as I, ii, V7, viio or bVII."
        },
        { HarmonyText.Parse(" ").Errors, "There is no chord: write Roman numerals with beats, such as I:2 V7:2 I:3." },
        { HarmonyText.Parse("I", Beats.FromFraction(3, 2)).Errors, "The chords last 1 beats and the pattern 1.5: give them the same length." },
        { PitchRangeText.Parse("low").Errors, "'low' is no range: write the lowest and the highest note with a hyphen, such as C4-G5 or Bb2-D4." },
        { PitchRangeText.Parse("D4-Bb2").Errors, "The lowest note D4 lies above the highest note Bb2: write the lower one first." },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_says_what_is_wrong_and_what_to_write(IReadOnlyList<TextError> errors, string message) =>
        Assert.Equal(message, Assert.Single(errors).Message);
}
