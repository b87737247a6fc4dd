using System.Collections.Frozen;

namespace WarmupConsole.Music.Exercises;

/// <summary>
/// One row per ending that warm-up syllables are spelled with, and what it stands for in IPA (common practice in English teaching
/// texts; the catalogue writes them so). A syllable of consonants alone is sung on them.
/// </summary>
public static class SpelledVowelData
{
    private static readonly FrozenDictionary<string, string> Rows = new Dictionary<string, string>
    {
        ["oo"] = "u",
        ["ee"] = "i",
        ["ay"] = "e",
        ["eh"] = "ɛ",
        ["ah"] = "ɑ",
        ["aw"] = "ɔ",
        ["oh"] = "o",
        ["mm"] = "m",
        ["nn"] = "n",
        ["ng"] = "ŋ",
        ["br"] = "ʙ",
        ["brr"] = "ʙ",
        ["rr"] = "r",
        ["vv"] = "v",
        ["zz"] = "z",
    }.ToFrozenDictionary();

    /// <summary>All spellings, longest first.</summary>
    public static IReadOnlyList<string> Spellings { get; } = [.. Rows.Keys.OrderByDescending(spelling => spelling.Length).ThenBy(spelling => spelling, StringComparer.Ordinal)];

    /// <summary>IPA of a syllable by its ending, or empty when the table does not know it.</summary>
    public static string Vowel(string syllable) =>
        Spellings.FirstOrDefault(spelling => syllable.EndsWith(spelling, StringComparison.OrdinalIgnoreCase)) is { } found ? Rows[found] : "";

    /// <summary>The pattern with a vowel for each syllable that has none and whose ending is known.</summary>
    public static Pattern Complete(Pattern pattern) => new(
        [.. pattern.Notes.Select(note => note.Syllable is { Vowel.Length: 0 } bare ? note with { Syllable = bare with { Vowel = Vowel(bare.Text) } } : note)]);
}
