using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace WarmupConsole.Music.Repertoire.Words;

/// <summary>
/// The vowel of a sung syllable by the spelling rules of its language: Latin (as the church in Italy sings it), Italian, German. Common
/// practice of sung diction, simplified: where the spelling leaves it open, the open vowel is taken in Latin, the closed one in Italian.
/// </summary>
public static class LanguageVowels
{
    private const string Letters = "aeiouyäöü";
    private const string Glides = "iu";
    private static readonly SearchValues<char> Any = SearchValues.Create(Letters);

    private static readonly FrozenDictionary<string, Rules> ByCode = new Rules[]
    {
        new("la", "Latin", true, Table("ae ɛ, oe ɛ, au a, a a, e ɛ, i i, o ɔ, u u, y i")),
        new("it", "Italian", true, Table("a a, e e, i i, o o, u u, y i")),
        new("de", "German", false, Table("aeu ɔ, äu ɔ, eu ɔ, ei a, ai a, ey a, ay a, au a, ieh i, ie i, ih i, aa a, ah a, ee e, eh e, oo o, oh o, uh u, äh ɛ, öh ø, üh y, a a, e ɛ, i ɪ, o ɔ, u ʊ, ä ɛ, ö ø, ü y, y y")),
    }.ToFrozenDictionary(rules => rules.Code);

    /// <summary>The languages with rules: "la", "it", "de", each with its name.</summary>
    public static IReadOnlyList<(string Code, string Name)> Known { get; } = [.. ByCode.Values.Select(rules => (rules.Code, rules.Name)).Order()];

    /// <summary>The name of a language with rules by its code, also with a region ("de-AT"); null for others.</summary>
    public static string? NameOf(string language) => Find(language)?.Name;

    /// <summary>What finds the vowel of a syllable as IPA (empty when it has none); null for a language without rules.</summary>
    public static Func<string, string>? For(string language) => Find(language) is { } rules ? syllable => rules.Vowel(Plain(syllable)) : null;

    private static Rules? Find(string language) => ByCode.GetValueOrDefault(language.Split('-', '_')[0].Trim().ToLowerInvariant());

    private static (string Spelling, string Vowel)[] Table(string rows) =>
        [.. rows.Split(", ").Select(row => row.Split(' ')).Select(row => (row[0], row[1]))];

    /// <summary>Small letters without accents; of the marked ones only the German three are letters of their own.</summary>
    private static string Plain(string syllable)
    {
        StringBuilder plain = new();
        foreach (char c in syllable.ToLowerInvariant())
        {
            plain.Append(c switch { 'æ' or 'ǽ' => "ae", 'œ' => "oe", _ => PlainLetters.Of(c).ToString() });
        }

        return new([.. plain.ToString().Where(c => CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.LowercaseLetter)]);
    }

    /// <param name="Code">As scores name it.</param>
    /// <param name="Name">In words.</param>
    /// <param name="HasGlides">True where i and u before another vowel are no vowels of their own ("pie", "qui", "iam").</param>
    /// <param name="Spellings">The longer before the shorter.</param>
    private sealed record Rules(string Code, string Name, bool HasGlides, (string Spelling, string Vowel)[] Spellings)
    {
        internal string Vowel(string syllable)
        {
            int at = syllable.AsSpan().IndexOfAny(Any);
            if (at < 0)
            {
                return "";
            }

            bool isSilent = at > 0 && syllable[at] == 'u' && syllable[at - 1] == 'q';
            at += isSilent || (HasGlides && IsGlide(syllable, at)) ? 1 : 0;
            string rest = syllable[at..];
            return Spellings.FirstOrDefault(row => rest.StartsWith(row.Spelling, StringComparison.Ordinal)).Vowel ?? "";
        }

        private static bool IsGlide(string syllable, int at) =>
            Glides.Contains(syllable[at], StringComparison.Ordinal) && at + 1 < syllable.Length && Letters.Contains(syllable[at + 1], StringComparison.Ordinal);
    }
}
