using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>A chord of a key: which degree it stands on, how its root is altered, and what it is made of.</summary>
/// <param name="Number">Degree of the root, 1–7.</param>
/// <param name="Alteration">Semitones of the root against the scale, −1 to 1.</param>
/// <param name="Major">True for a major third (upper-case).</param>
/// <param name="Diminished">True for a lowered fifth ("o"); the third is then minor.</param>
/// <param name="Seventh">True when the seventh is added.</param>
public readonly record struct RomanNumeral(int Number, int Alteration, bool Major, bool Diminished, bool Seventh)
{
    private static readonly string[] Numerals = ["I", "II", "III", "IV", "V", "VI", "VII"];

    /// <summary>Reads "I", "ii", "V7", "viio", "viio7", "bVII".</summary>
    public static bool TryParse(string text, out RomanNumeral numeral)
    {
        string rest = text.TrimStart('b', '#');
        string signs = text[..^rest.Length];
        bool seventh = rest.EndsWith('7');
        rest = seventh ? rest[..^1] : rest;
        bool diminished = rest.EndsWith('o');
        rest = diminished ? rest[..^1] : rest;
        string upper = rest.ToUpperInvariant();
        bool major = rest == upper;
        int number = Array.IndexOf(Numerals, upper) + 1;
        numeral = new(number, signs == "b" ? -1 : signs.Length, major, diminished, seventh);
        bool oneCase = rest.All(char.IsAsciiLetterUpper) || rest.All(char.IsAsciiLetterLower);
        return number > 0 && oneCase && signs.Length <= 1 && !(major && diminished);
    }

    /// <summary>Its tones upwards from the root, in close position, relative to the tonic of the key.</summary>
    /// <param name="mode">The mode of the key. Common practice: a diminished chord on the seventh degree stands on the leading note in the minors too.</param>
    public IReadOnlyList<Interval> Tones(Mode mode)
    {
        bool leadingNote = Diminished && Number == 7 && Alteration == 0;
        Interval root = ModeData.IntervalOf(leadingNote ? Mode.Major : mode, new(Number, Alteration, 0));
        List<Interval> tones = [root, root + new Interval(2, Major ? 4 : 3), root + new Interval(4, Diminished ? 6 : 7)];
        if (Seventh)
        {
            tones.Add(root + new Interval(6, SeventhSemitones(mode)));
        }

        return tones;
    }

    /// <summary>Minor on the dominant and on altered roots, diminished on diminished chords, else as the scale has it.</summary>
    private int SeventhSemitones(Mode mode)
    {
        if (Diminished)
        {
            return 9;
        }

        Degree seventh = new(((Number + 5) % 7) + 1, 0, Number == 1 ? 0 : 1);
        return Number == 5 || Alteration != 0
            ? 10
            : ModeData.IntervalOf(mode, seventh).Semitones - ModeData.Semitones(mode, Number);
    }
}
