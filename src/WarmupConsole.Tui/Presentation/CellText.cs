using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Text cut into characters that may be shown. Names come from files, so nothing in them may steer the terminal.</summary>
public static class CellText
{
    private const string Replacement = "\uFFFD";

    /// <summary>Most of a screen is made of these, so they are neither cut out nor looked at again.</summary>
    private static readonly string[] Ascii = [.. Enumerable.Range(0, 128).Select(code => ((char)code).ToString())];

    /// <summary>The characters as a reader counts them; controls become a visible sign, invisible ones are left out.</summary>
    public static IEnumerable<string> Split(string text)
    {
        for (int at = 0; at < text.Length;)
        {
            if (IsPlain(text[at]) && (at + 1 == text.Length || char.IsAscii(text[at + 1])))
            {
                yield return Ascii[text[at++]];
                continue;
            }

            int length = StringInfo.GetNextTextElementLength(text, at);
            string element = Harmless(text.Substring(at, length));
            at += length;
            if (element.Length > 0)
            {
                yield return element;
            }
        }
    }

    public static int Columns(string text) => Split(text).Sum(ColumnsOf);

    public static int ColumnsOf(string element) => element switch
    {
        [var only] when IsPlain(only) => 1,
        [var only] when Rune.TryCreate(only, out Rune rune) => Math.Clamp(rune.GetColumns(), 1, 2),
        _ => Math.Clamp(element.GetColumns(), 1, 2),
    };

    /// <summary>The text without anything that is not shown.</summary>
    public static string Clean(string text) => string.Concat(Split(text));

    /// <summary>Shortened with an ellipsis to so many columns.</summary>
    public static string Fit(string text, int columns)
    {
        if (Columns(text) <= columns)
        {
            return text;
        }

        StringBuilder kept = new();
        int used = 1;
        foreach (string element in Split(text))
        {
            used += ColumnsOf(element);
            if (used > columns)
            {
                break;
            }

            kept.Append(element);
        }

        return columns < 1 ? "" : kept.ToString().TrimEnd() + "…";
    }

    /// <summary>Broken between words into lines of so many columns; a longer word is broken.</summary>
    public static IReadOnlyList<string> Wrap(string text, int columns)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, columns)))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Columns(longer) > columns)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        return line.Length == 0 ? lines : [.. lines, line];
    }

    private static IEnumerable<string> Pieces(string word, int columns)
    {
        StringBuilder piece = new();
        int used = 0;
        foreach (string element in Split(word))
        {
            int more = ColumnsOf(element);
            if (used > 0 && used + more > columns)
            {
                yield return piece.ToString();
                piece.Clear();
                used = 0;
            }

            piece.Append(element);
            used += more;
        }

        yield return piece.ToString();
    }

    /// <summary>One that stands for itself, whatever plain character follows.</summary>
    private static bool IsPlain(char character) => character is >= ' ' and <= '~';

    private static string Harmless(string element)
    {
        if (element is [var only] && char.GetUnicodeCategory(only) is var category && category != UnicodeCategory.Surrogate && InsteadOf(category) is null)
        {
            return element;
        }

        StringBuilder kept = new();
        foreach (Rune rune in element.EnumerateRunes())
        {
            kept.Append(InsteadOf(Rune.GetUnicodeCategory(rune)) ?? rune.ToString());
        }

        return kept.ToString();
    }

    /// <summary>What stands for a character that must not reach the terminal; null for one that may.</summary>
    private static string? InsteadOf(UnicodeCategory category) => category switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => Replacement,
        UnicodeCategory.Format or UnicodeCategory.OtherNotAssigned => "",
        _ => null,
    };
}
