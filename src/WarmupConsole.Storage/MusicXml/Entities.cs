namespace WarmupConsole.Storage.MusicXml;

/// <summary>
/// Names that a file declares for texts of its own. They are never expanded: where one is used, its sign gives way to U+FFFD and
/// the name stands as it is. Names for something outside the file are left alone, and the reader stops at them.
/// </summary>
internal static class Entities
{
    private const string Declaration = "<!ENTITY";

    /// <summary>The text without uses of declared names, as long as before; and the names.</summary>
    internal static (string Text, IReadOnlyList<string> Names) Disarmed(string text)
    {
        if (!text.Contains(Declaration, StringComparison.Ordinal))
        {
            return (text, []);
        }

        HashSet<string> names = Declared(text);
        List<string> used = [];
        char[] plain = text.ToCharArray();
        for (int at = text.IndexOf('&', StringComparison.Ordinal); at >= 0; at = text.IndexOf('&', at + 1))
        {
            int end = text.IndexOf(';', at);
            if (end > at && end - at <= MusicXmlLimits.LongestText && names.Contains(text[(at + 1)..end]))
            {
                plain[at] = '\uFFFD';
                used.Add(text[(at + 1)..end]);
            }
        }

        return (new(plain), [.. used.Distinct()]);
    }

    private static HashSet<string> Declared(string text)
    {
        HashSet<string> names = [];
        for (int at = text.IndexOf(Declaration, StringComparison.Ordinal); at >= 0; at = text.IndexOf(Declaration, at + 1, StringComparison.Ordinal))
        {
            ReadOnlySpan<char> rest = text.AsSpan(at + Declaration.Length, Math.Min(MusicXmlLimits.LongestText, text.Length - at - Declaration.Length)).TrimStart();
            int space = rest.IndexOfAny(' ', '\t', '\n');
            ReadOnlySpan<char> value = space < 0 ? [] : rest[space..].TrimStart();
            if (value is ['"' or '\'', ..])
            {
                names.Add(rest[..space].ToString());
            }
        }

        return names;
    }
}
