using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Decisions;

/// <summary>
/// decisions.jsonl: findings that the director dismissed, and why; a line each, never changed afterwards. Every line is also a YAML
/// mapping and is read as strictly as one.
/// </summary>
public static class DecisionsFile
{
    /// <summary>Its name in a choir folder.</summary>
    public const string Name = "decisions.jsonl";

    private const string Dismiss = "dismiss";
    private const string Restore = "restore";

    private static readonly FieldTable Fields = new(
        "a line of decisions.jsonl",
        Field.Format,
        Field.Date("on", "The day of the decision.").Must,
        Field.Id("finding", "The finding's id.").Must,
        Field.Choice("do", new Choices<bool>((Dismiss, true), (Restore, false)), "What was decided.").Must,
        Field.Text("why", "The reason."));

    /// <summary>The decisions of a folder, oldest first; without a file there are none. What is wrong with a line is told and the line left out.</summary>
    public static FileRead<IReadOnlyList<Decision>> Load(ChoirFolder folder)
    {
        string path = PathIn(folder);
        if (!File.Exists(path))
        {
            return new([], []);
        }

        FileRead<byte[]> bytes = BoundedFile.Read(path, Utf8Text.MostBytes);
        FileRead<SourceText> source = bytes.IsGood ? Utf8Text.Decode(path, bytes.Value) : new(null, bytes.Problems);
        return source.IsGood ? Read(path, source.Value.Lines) : new([], source.Problems);
    }

    /// <summary>Adds one line and flushes it to the disk; null, or why it could not.</summary>
    public static string? Append(ChoirFolder folder, Decision decision)
    {
        try
        {
            Directory.CreateDirectory(folder.WriteRoot);
            using FileStream stream = new(PathIn(folder), FileMode.Append, FileAccess.Write, FileShare.Read);
            stream.Write(Encoding.UTF8.GetBytes(Write(decision) + "\n"));
            stream.Flush(flushToDisk: true);
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }

    /// <summary>A line, without its end.</summary>
    public static string Write(Decision decision) =>
        $$"""{"format": 1, "on": "{{DayText.Write(decision.On)}}", "finding": "{{decision.Finding}}", "do": "{{(decision.IsDismissal ? Dismiss : Restore)}}", "why": "{{JsonEncodedText.Encode(decision.Why, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}}"}""";

    /// <summary>The findings that are dismissed now, with the decision that did it.</summary>
    public static IReadOnlyDictionary<string, Decision> Dismissed(IEnumerable<Decision> decisions) => decisions
        .GroupBy(decision => decision.Finding).Select(same => same.Last())
        .Where(last => last.IsDismissal).ToDictionary(last => last.Finding);

    private static string PathIn(ChoirFolder folder) => Path.Combine(folder.WriteRoot, Name);

    private static FileRead<IReadOnlyList<Decision>> Read(string path, IEnumerable<string> lines)
    {
        List<Decision> decisions = [];
        List<FileProblem> problems = [];
        foreach ((int index, string line) in lines.Index().Where(line => line.Item.Length > 0))
        {
            FileRead<Decision> read = ReadLine(path, line);
            decisions.AddRange(read.IsGood ? [read.Value] : []);
            problems.AddRange(read.Problems.Select(problem => problem with { Line = index + 1 }));
        }

        return new(decisions, [.. problems.Take(ProblemList.Most)]);
    }

    private static FileRead<Decision> ReadLine(string path, string line)
    {
        FileRead<MapReader> opened = FormatCheck.Open(path, Encoding.UTF8.GetBytes(line), Fields);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader fields = opened.Value;
        Decision decision = new(fields.Date("on") ?? default, fields.Id("finding"), fields.Choice<bool>("do") ?? false, fields.Text("why"));
        fields.Finish();
        return fields.Problems.Finish(decision);
    }
}
