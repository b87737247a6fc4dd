using System.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>The text of a plan cut at its steps.</summary>
/// <param name="Head">Everything before the first step.</param>
/// <param name="Steps">In order.</param>
/// <param name="Tail">Everything behind the last step.</param>
internal sealed record StepBlocks(string Head, IReadOnlyList<StepBlock> Steps, string Tail)
{
    /// <summary>Null where a step does not begin a line of its own, as in a list on one line.</summary>
    internal static StepBlocks? Of(string yaml)
    {
        string text = yaml.ReplaceLineEndings("\n");
        string[] lines = [.. (text.EndsWith('\n') ? text[..^1] : text).Split('\n').Select(line => line + "\n")];
        if (YamlTree.Read("", Encoding.UTF8.GetBytes(text)).Value?.Top.Find("steps")?.Value is not YamlList { Items: [_, ..] items })
        {
            return null;
        }

        int[] starts = [.. items.Select(item => item.Place.Line - 1)];
        bool areOwn = starts.All(start => lines[start].TrimStart().StartsWith('-')) && starts.Distinct().Count() == starts.Length;
        return areOwn ? Cut(lines, starts) : null;
    }

    private static StepBlocks Cut(string[] lines, int[] starts)
    {
        int[] aboves = [.. starts.Select(start => AboveOf(lines, start))];
        int end = EndOf(lines, starts[^1]);
        IEnumerable<StepBlock> steps = starts.Select((start, index) => new StepBlock(
            Join(lines, aboves[index], start), Join(lines, start, index + 1 < starts.Length ? aboves[index + 1] : end)));
        return new(Join(lines, 0, aboves[0]), [.. steps], Join(lines, end, lines.Length));
    }

    /// <summary>The first of the comments and empty lines directly above a step.</summary>
    private static int AboveOf(string[] lines, int start)
    {
        int above = start;
        while (above > 0 && IsAside(lines[above - 1]))
        {
            above--;
        }

        return above;
    }

    /// <summary>Where the next thing of the plan begins, with the comments above it, or the file ends.</summary>
    private static int EndOf(string[] lines, int start)
    {
        int end = start + 1;
        while (end < lines.Length && (IsAside(lines[end]) || lines[end][0] is ' ' or '\t'))
        {
            end++;
        }

        return end < lines.Length ? AboveOf(lines, end) : end;
    }

    private static bool IsAside(string line) => line.Trim() is "" or ['#', ..];

    private static string Join(string[] lines, int from, int to) => string.Concat(lines.Skip(from).Take(to - from));
}
