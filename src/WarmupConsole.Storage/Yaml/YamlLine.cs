using System.Text;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Writes a text so that it reads back as itself.</summary>
internal static class YamlLine
{
    /// <summary>Bare where that is safe, else in double quotes; characters that no text may hold become U+FFFD.</summary>
    internal static string Quote(string text)
    {
        string clean = Printable.Line(text);
        return IsBareSafe(clean) ? clean : $"\"{Escape(clean)}\"";
    }

    /// <summary>Texts as a list on one line.</summary>
    internal static string List(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Quote))}]";

    /// <summary>Letters, digits and plain signs only: nothing that YAML could take for something else, also inside brackets.</summary>
    private static bool IsBareSafe(string text) =>
        text.Length > 0 && char.IsLetter(text[0]) && text[^1] != ' '
        && text.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '.' or '\'' or '/' or ';')
        && text is not ("true" or "false" or "null" or "yes" or "no" or "on" or "off");

    private static string Escape(string text) => new StringBuilder(text).Replace("\\", "\\\\").Replace("\"", "\\\"").ToString();
}
