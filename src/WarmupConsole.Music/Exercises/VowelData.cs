using System.Collections.Frozen;

namespace WarmupConsole.Music.Exercises;

/// <summary>
/// One row per height of the IPA vowel chart, 0 closed to 1 open in its seven steps; hums, trills and voiced fricatives count
/// as closed, because they narrow the mouth even more.
/// </summary>
public static class VowelData
{
    private const string HalfClosedSounds = "mnŋɲʙrvzβʒðw";

    private static readonly (string Vowels, int Step)[] Rows =
    [
        ("iyɨʉɯu", 0),
        ("ɪʏʊ", 1),
        ("eøɘɵɤo", 2),
        ("ə", 3),
        ("ɛœɜɞʌɔ", 4),
        ("æɐ", 5),
        ("aɶɑɒ", 6),
    ];

    private static readonly FrozenDictionary<char, double> Heights = Rows
        .SelectMany(row => row.Vowels.Select(vowel => (vowel, Height: row.Step / 6.0)))
        .Concat(HalfClosedSounds.Select(sound => (vowel: sound, Height: 0.0)))
        .ToFrozenDictionary(row => row.vowel, row => row.Height);

    /// <summary>How open the mouth is, 0 closed to 1 open; of a diphthong its first vowel; null when the text has none that is known.</summary>
    public static double? Height(string vowel)
    {
        foreach (char sound in vowel)
        {
            if (Heights.TryGetValue(sound, out double height))
            {
                return height;
            }
        }

        return null;
    }

    /// <summary>True for a hum, a trill or a voiced fricative: half-closed sounds come before full singing.</summary>
    public static bool IsHalfClosed(string vowel) => vowel.Length > 0 && HalfClosedSounds.Contains(vowel[0], StringComparison.Ordinal);
}
