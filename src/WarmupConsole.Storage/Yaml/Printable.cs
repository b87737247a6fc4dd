using System.Text;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Which characters a text may hold, and how to show one that holds others without giving them to the terminal.</summary>
public static class Printable
{
    /// <summary>
    /// True for what no text of ours may hold: control characters (they can rewrite a terminal), line separators, halves of a
    /// character, and the overrides that show text in another order than it has (U+202A–202E, U+2066–2069).
    /// </summary>
    public static bool IsForbidden(char c) =>
        char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' || IsOrderOverride(c);

    /// <summary>True for the characters that show text in another order than it has.</summary>
    public static bool IsOrderOverride(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Index of the first character that no text may hold, or −1.</summary>
    public static int FirstForbidden(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            bool pair = char.IsHighSurrogate(text[at]) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]);
            if (IsForbidden(text[at]) || (!pair && char.IsSurrogate(text[at])))
            {
                return at;
            }

            at += pair ? 1 : 0;
        }

        return -1;
    }

    /// <summary>The text with each forbidden character replaced: a tab by a space, others by U+FFFD. The length stays.</summary>
    public static string Line(string text)
    {
        StringBuilder shown = new(text);
        for (int at = 0; at < shown.Length; at++)
        {
            if (IsForbidden(shown[at]))
            {
                shown[at] = shown[at] == '\t' ? ' ' : '\uFFFD';
            }
        }

        return shown.ToString();
    }

    /// <summary>A character by its number: "U+001B".</summary>
    public static string Name(char c) => $"U+{(int)c:X4}";
}
