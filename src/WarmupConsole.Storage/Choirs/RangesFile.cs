using System.Text;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>
/// ranges.jsonl: what the console wrote when the director accepted a change of range, a line each, never changed afterwards. Every
/// line is also a YAML mapping and is read as strictly as one.
/// </summary>
public static class RangesFile
{
    /// <summary>Reads the file; without one there are no lines.</summary>
    public static FileRead<IReadOnlyList<MeasuredRange>> Load(string path)
    {
        if (!File.Exists(path))
        {
            return new([], []);
        }

        FileRead<byte[]> bytes = BoundedFile.Read(path, Utf8Text.MostBytes);
        return bytes.IsGood ? Read(path, bytes.Value) : new(null, bytes.Problems);
    }

    /// <summary>All lines in their order, or everything that is wrong with any of them.</summary>
    public static FileRead<IReadOnlyList<MeasuredRange>> Read(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<SourceText> source = Utf8Text.Decode(file, bytes);
        if (!source.IsGood)
        {
            return new(null, source.Problems);
        }

        List<MeasuredRange> ranges = [];
        List<FileProblem> problems = [];
        foreach ((int index, string line) in source.Value.Lines.Index().Where(line => line.Item.Length > 0))
        {
            FileRead<MeasuredRange> read = ReadLine(file, line);
            ranges.AddRange(read.IsGood ? [read.Value] : []);
            problems.AddRange(read.Problems.Select(problem => problem with { Line = index + 1 }));
        }

        return problems.Count == 0 ? new(ranges, []) : new(null, [.. problems.Take(ProblemList.Most)]);
    }

    /// <summary>Adds one line and flushes it to the disk; null, or why it could not.</summary>
    public static string? Append(string path, MeasuredRange range)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            using FileStream stream = new(path, FileMode.Append, FileAccess.Write, FileShare.Read);
            stream.Write(Encoding.UTF8.GetBytes(Write(range) + "\n"));
            stream.Flush(flushToDisk: true);
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return StorageTexts.Unwritable(FileFault.Reason(fault));
        }
    }

    /// <summary>A line, without its end.</summary>
    public static string Write(MeasuredRange range) =>
        $$"""{"format": 1, "from": "{{DayText.Write(range.From)}}", "part": "{{range.PartId}}", "extreme": "{{PitchRangeText.Write(range.Range.Extreme)}}", "comfortable": "{{PitchRangeText.Write(range.Range.Comfortable)}}"}""";

    /// <summary>The choir with these lines in the histories of its parts. Of the same day choir.yaml counts; lines of parts that are gone wait for their return.</summary>
    public static Choir Join(Choir choir, IReadOnlyList<MeasuredRange> measured) =>
        measured.Count == 0 ? choir : choir with { Parts = [.. choir.Parts.Select(part => Join(part, measured))] };

    private static Part Join(Part part, IReadOnlyList<MeasuredRange> measured) => part with
    {
        History =
        [
            .. part.History.Where(entry => entry.From is null),
            .. measured.Where(range => range.PartId == part.Id).Select(range => new RangeEntry(range.From, range.Range, IsStart: false)),
            .. part.History.Where(entry => entry.From is not null),
        ],
    };

    private static FileRead<MeasuredRange> ReadLine(string file, string line)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, Encoding.UTF8.GetBytes(line), ChoirFields.MeasuredRange);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader fields = opened.Value;
        string part = fields.Id("part");
        DateOnly? from = fields.Date("from");
        VoiceRange? range = RangesReader.Read(fields);
        fields.Finish();
        return fields.Problems.Finish(range is null ? null : new MeasuredRange(part, from ?? default, range));
    }
}
