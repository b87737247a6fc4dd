namespace WarmupConsole.Storage.Yaml;

/// <summary>The comments of a YAML text.</summary>
internal static class YamlComments
{
    // An apostrophe within a word quotes nothing.
    private const string BeforeQuote = " \t[{,:";

    /// <summary>Each with its # to the end of its line. A # in a quoted text, or within a word, begins none.</summary>
    internal static IEnumerable<string> In(string yaml) => yaml.ReplaceLineEndings("\n").Split('\n').Select(Of).OfType<string>();

    private static string? Of(string line)
    {
        char quote = '\0';
        for (int at = 0; at < line.Length; at++)
        {
            char sign = line[at];
            if (sign == '#' && quote == '\0' && (at == 0 || char.IsWhiteSpace(line[at - 1])))
            {
                return line[at..].TrimEnd();
            }

            quote = (quote, sign) switch
            {
                ('\0', '"' or '\'') when at == 0 || BeforeQuote.Contains(line[at - 1]) => sign,
                _ when sign == quote => '\0',
                _ => quote,
            };
        }

        return null;
    }
}
