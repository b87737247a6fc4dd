using System.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Needs;

/// <summary>Changes to the text of a needs file that touch one entry only: comments and order of all else stay as they are.</summary>
internal static class NeedsText
{
    private const string Empty = "# What to work on, until when; 'warmup need' writes here, and so may you.\n" + Head;

    private const string Head = "format: 1\nneeds:\n";
    private const int FirstFieldLine = 3;

    /// <summary>A file of one need, a field on each line.</summary>
    internal static string Alone(IReadOnlyList<(string Name, string Value)> fields) =>
        $"{Head}  - {string.Join("\n    ", fields.Select(Field))}\n";

    /// <summary>The option whose value stands in a line of such a file.</summary>
    internal static string OptionAt(int line, IReadOnlyList<(string Name, string Value)> fields) =>
        line >= FirstFieldLine && line < FirstFieldLine + fields.Count ? "--" + fields[line - FirstFieldLine].Name : NeedsFile.Name;

    /// <summary>The text with one entry more, at the end of the list; null where the list is not the last thing in the file.</summary>
    internal static string? Added(string? text, IReadOnlyList<(string Name, string Value)> fields)
    {
        string old = text ?? Empty;
        string entry = string.Join(", ", fields.Select(Field));
        if (List(old) is { Items.Count: 0 } none)
        {
            int at = IndexOf(old, none.Place);
            return old.AsSpan(at).TrimEnd() is "[]" ? $"{old[..at].TrimEnd()}\n  - {{{entry}}}\n" : null;
        }

        // The dash stands two columns before what it begins; columns count from 1.
        int indent = Math.Max(0, (List(old)?.Items[^1].Place.Column ?? 5) - 3);
        return $"{old.TrimEnd()}\n{new string(' ', indent)}- {{{entry}}}\n";
    }

    /// <summary>The text with a date in one entry, before its first field.</summary>
    internal static string WithDone(string text, int index, string date)
    {
        YamlPlace place = List(text)!.Items[index].Place;
        int at = IndexOf(text, place);
        return text[at] == '{'
            ? text.Insert(at + 1, $"done: {date}, ")
            : text.Insert(at, $"done: {date}\n{new string(' ', place.Column - 1)}");
    }

    private static string Field((string Name, string Value) field) => $"{field.Name}: {YamlLine.Quote(field.Value)}";

    private static YamlList? List(string text) =>
        YamlTree.Read("", Encoding.UTF8.GetBytes(text)).Value?.Top.Find("needs")?.Value as YamlList;

    private static int IndexOf(string text, YamlPlace place)
    {
        int at = 0;
        for (int line = 1; line < place.Line; line++)
        {
            at = text.IndexOf('\n', at) + 1;
        }

        return at + place.Column - 1;
    }
}
