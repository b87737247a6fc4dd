using System.Globalization;

namespace WarmupConsole.Music.Text;

/// <summary>What is said about musical texts that cannot be read: what is wrong, what is allowed.</summary>
public static class MusicTextErrors
{
    /// <summary>For patterns and single degrees.</summary>
    public static string Degree(string text) =>
        $"'{text}' is no degree: write a number 1 to 21 (8 is the upper tonic), b or # before it if altered, a comma for each octave down; or do re mi fa so la ti with ' or , for octaves.";

    /// <summary>For patterns.</summary>
    public static string PatternWord(string text) =>
        $"'{text}' is no note: write degree:beats, such as 5, b3:1/2 or 7,:2; - is a rest.";

    /// <summary>For lengths of notes, rests and chords.</summary>
    public static string Beats(string text) =>
        $"'{text}' is no length: write beats as a whole number, a decimal or a fraction (2, 0.5, 1/3), more than 0 and at most {Rhythm.BeatsText.MostBeats}, in whole 1/{Rhythm.Beats.TicksPerBeat} beats.";

    /// <summary>For a pattern of rests, or of nothing.</summary>
    public const string EmptyPattern = "The pattern has no sounding note: write degrees separated by spaces, such as 1 2 3 4 5 4 3 2 1.";

    /// <summary>For a pattern without end.</summary>
    public static string TooManyNotes(int most) =>
        string.Create(CultureInfo.InvariantCulture, $"More than {most} notes: a warm-up pattern is shorter; repeat it in more keys instead.");

    /// <summary>For a number of syllables that fits neither one nor all notes.</summary>
    public static string SyllableCount(int syllables, int notes) =>
        string.Create(CultureInfo.InvariantCulture, $"{syllables} syllables for {notes} sounding notes: write one for each (~ carries the last one on), or a single one for all.");

    /// <summary>For syllables that are given but empty.</summary>
    public const string NoSyllable = "There is no syllable: write one for each sounding note, such as noo/u ~ ~, or a single one for all.";

    /// <summary>For a text that begins with ~.</summary>
    public const string CarriesNothing = "'~' carries the last syllable on, but nothing stands before it: begin with a syllable, such as noo/u.";

    /// <summary>For a syllable with half a vowel, or two.</summary>
    public static string Syllable(string text) =>
        $"'{text}' is no syllable: write its text, and after / its vowel in IPA if known, such as noo/u; ~ carries the last one on.";

    /// <summary>For one chord.</summary>
    public static string Numeral(string text) =>
        $"'{text}' is no chord: write I to VII (upper-case major, lower-case minor, o diminished), b or # before it if altered, 7 after it for the seventh, such as I, ii, V7, viio or bVII.";

    /// <summary>For chords that are given but empty.</summary>
    public const string EmptyHarmony = "There is no chord: write Roman numerals with beats, such as I:2 V7:2 I:3.";

    /// <summary>For chords that end before or after the pattern.</summary>
    public static string HarmonyLength(Rhythm.Beats harmony, Rhythm.Beats pattern) =>
        $"The chords last {harmony} beats and the pattern {pattern}: give them the same length.";

    /// <summary>For ranges of voices.</summary>
    public static string Range(string text) =>
        $"'{text}' is no range: write the lowest and the highest note with a hyphen, such as C4-G5 or Bb2-D4.";

    /// <summary>For a range upside down.</summary>
    public static string RangeOrder(string low, string high) =>
        $"The lowest note {low} lies above the highest note {high}: write the lower one first.";
}
