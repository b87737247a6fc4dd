using System.Globalization;
using System.Text;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Typed text made safe to show, and cut into words.</summary>
internal static class MarkText
{
    /// <summary>The token that stands between two clauses.</summary>
    internal const string ClauseEnd = ",";

    private const string ClauseEnds = ",;&+";
    private static readonly char[] Separators = [' ', '/', ':'];
    private static readonly char[] SentenceEnds = ['.', '!', '?'];
    private static readonly char[] Brackets = ['"', '(', ')'];
    private static readonly string[] AfterHyphen = ["flat", "sharp", "major", "minor", "maj", "min", "dur", "moll"];

    /// <summary>Without control and direction characters and broken surrogates, which could move the cursor or turn the line round.</summary>
    internal static string Clean(string raw)
    {
        StringBuilder clean = new(raw.Length);
        foreach (Rune rune in raw.EnumerateRunes())
        {
            clean.Append(IsShown(rune) ? rune.ToString() : Rune.IsControl(rune) ? " " : "");
        }

        return clean.ToString().Trim();
    }

    /// <summary>Lower-case words; commas, slashes and their like separate.</summary>
    internal static IReadOnlyList<string> Words(string raw) =>
        [.. Tokens(raw).Where(token => token != ClauseEnd).Select(word => word.ToLowerInvariant())];

    /// <summary>
    /// Words with their large and small letters, which tell octaves apart in some note names, and <see cref="ClauseEnd"/> where a comma
    /// or its like stood. "E-flat" is two words.
    /// </summary>
    internal static IReadOnlyList<string> Tokens(string raw)
    {
        string spaced = string.Concat(Clean(raw).Select(sign => ClauseEnds.Contains(sign) ? $" {ClauseEnd} " : sign.ToString()));
        return [.. spaced.Split(Separators, StringSplitOptions.RemoveEmptyEntries).SelectMany(Split).Where(token => token.Length > 0)];
    }

    private static IEnumerable<string> Split(string word)
    {
        string bare = word.Trim(Brackets);
        string name = bare.TrimEnd(SentenceEnds);
        int hyphen = name.LastIndexOf('-');
        string[] names = hyphen > 0 && AfterHyphen.Contains(name[(hyphen + 1)..].ToLowerInvariant()) ? [name[..hyphen], name[(hyphen + 1)..]] : [name];
        return name.Length < bare.Length ? names.Append(ClauseEnd) : names;
    }

    private static bool IsShown(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
