using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>Reads choir.yaml, as docs/plan-format.md says.</summary>
public static class ChoirFile
{
    public const string Name = "choir.yaml";

    /// <summary>The choir as written, with every part's newest ranges; <see cref="Choir.AsOf"/> gives those of a day.</summary>
    public static FileRead<Choir> Read(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, ChoirFields.Choir);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader reader = opened.Value;
        Choir choir = new()
        {
            Name = reader.Text("name"),
            Town = reader.Text("town", ""),
            Demo = reader.YesNo("demo") ?? false,
            RehearsalMinutes = reader.Whole("rehearsal") ?? 120,
            Notes = NoteNaming.All[reader.Choice<int>("notes") ?? 0],
            Parts = PartsReader.Read(reader),
            Concerts = [.. reader.Maps("concerts").Select(ReadConcert)],
            OwnMarkKinds = ReadMarks(reader),
        };
        reader.Finish();
        return reader.Problems.Finish(choir);
    }

    /// <summary>The choir as a file that reads back as the same; comments and what is as usual are left out.</summary>
    public static string Write(Choir choir) => ChoirWriter.Write(choir);

    private static Concert ReadConcert(MapReader fields)
    {
        Concert concert = new(fields.Date("date") ?? default, fields.Text("title", ""));
        fields.Finish();
        return concert;
    }

    private static List<MarkKind> ReadMarks(MapReader reader)
    {
        Dictionary<string, int> lines = [];
        List<MarkKind> kinds = [];
        foreach (MapReader fields in reader.Maps("marks"))
        {
            string id = fields.Id("id");
            string[] spellings = [.. fields.Texts("spellings").Select(spelling => spelling.ToLowerInvariant())];
            kinds.Add(new(id, fields.Text("words", id), spellings, fields.YesNo("praise") ?? false) { IsEffort = fields.YesNo("effort") ?? false });
            UniqueCheck.Add(lines, fields, "id", id);
            fields.Finish();
        }

        return kinds;
    }
}
