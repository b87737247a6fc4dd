using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Music.Exercises;

/// <summary>The accompaniment's chords in and out: "I:2 V7:2 I:3".</summary>
public static class HarmonyText
{
    /// <summary>Reads Roman numerals with beats; all errors at once, each at its place.</summary>
    /// <param name="text">Chords separated by spaces, each <c>numeral[:beats]</c>; without beats, one.</param>
    /// <param name="patternLength">The pattern's length, which the chords must fill; null leaves that unchecked.</param>
    public static Parsed<IReadOnlyList<HarmonyChord>> Parse(string text, Beats? patternLength = null)
    {
        List<TextError> errors = [];
        List<HarmonyChord> chords = [.. Word.Split(text).Where(word => word.Text != "|").Select(word => Chord(word, errors))];
        Beats length = new(chords.Sum(chord => chord.Length.Ticks));
        if (chords.Count == 0)
        {
            errors.Add(new(0, text.Length, MusicTextErrors.EmptyHarmony));
        }
        else if (errors.Count == 0 && patternLength is Beats pattern && pattern != length)
        {
            errors.Add(new(0, text.Length, MusicTextErrors.HarmonyLength(length, pattern)));
        }

        return errors.Count == 0
            ? ParsedFactory.Value<IReadOnlyList<HarmonyChord>>(chords)
            : ParsedFactory.Errors<IReadOnlyList<HarmonyChord>>(errors);
    }

    /// <summary>A text that reads back as the same chords.</summary>
    public static string Write(IEnumerable<HarmonyChord> harmony) =>
        string.Join(' ', harmony.Select(chord => $"{chord.Numeral}:{BeatsText.Write(chord.Length)}"));

    private static HarmonyChord Chord(Word word, List<TextError> errors)
    {
        (Word head, Word? tail) = word.AtColon();
        Beats length = Beats.FromBeats(1);
        if (tail is Word beats && !BeatsText.TryParse(beats.Text, out length))
        {
            errors.Add(beats.Error(MusicTextErrors.Beats(beats.Text)));
        }

        if (!RomanNumeral.TryParse(head.Text, out _))
        {
            errors.Add(word.Error(MusicTextErrors.Numeral(head.Text)));
        }

        return new(head.Text, length);
    }
}
