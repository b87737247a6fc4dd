using System.Globalization;
using System.Text;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Typed text made safe to show, and cut into words.</summary>
internal static class MarkText
{
    private static readonly char[] Separators = [' ', ',', '&', '+', '/', ';', ':'];
    private static readonly char[] Endings = ['.', '!', '?', '"', '(', ')'];

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
        [.. TypedWords(raw).Select(word => word.ToLowerInvariant())];

    /// <summary>The same words with their large and small letters, which tell octaves apart in some note names.</summary>
    internal static IReadOnlyList<string> TypedWords(string raw) =>
        [.. Clean(raw).Split(Separators, StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Trim(Endings)).Where(word => word.Length > 0)];

    private static bool IsShown(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
