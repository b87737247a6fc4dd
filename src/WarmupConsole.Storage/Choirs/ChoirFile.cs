using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>Reads choir.yaml, as docs/plan-format.md says.</summary>
public static class ChoirFile
{
    public const string Name = "choir.yaml";

    private static readonly Limits Rehearsal = new(30, 300, "minutes");
    private static readonly Limits Concerts = new(0, 100, "concerts");
    private static readonly Limits Marks = new(0, 50, "marks");
    private static readonly Limits Spellings = new(0, 20, "spellings");

    private static readonly Choices<int> Notes = new([.. NoteNaming.All.Index().Select(naming => (naming.Item.Id, naming.Index))]);

    /// <summary>The choir as written, with every part's newest ranges; <see cref="Choir.AsOf"/> gives those of a day.</summary>
    public static FileRead<Choir> Read(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, "choir.yaml");
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
            RehearsalMinutes = reader.Whole("rehearsal", Rehearsal) ?? 120,
            Notes = NoteNaming.All[reader.Choice("notes", Notes) ?? 0],
            Parts = PartsReader.Read(reader),
            Concerts = [.. Each(reader, "concerts", Concerts, "a concert").Select(ReadConcert)],
            OwnMarkKinds = ReadMarks(reader),
        };
        reader.Finish();
        return reader.Problems.Finish(choir);
    }

    /// <summary>The choir as a file that reads back as the same; comments and what is as usual are left out.</summary>
    public static string Write(Choir choir) => ChoirWriter.Write(choir);

    private static IEnumerable<MapReader> Each(MapReader reader, string name, Limits howMany, string what) =>
        reader.OptionalItems(name, howMany).Select(node => MapReader.Over(node, what, reader.Problems)).OfType<MapReader>();

    private static Concert ReadConcert(MapReader fields)
    {
        DateOnly? date = fields.Required("date") is { } node ? fields.Values.Date(node, "date") : null;
        Concert concert = new(date ?? default, fields.Text("title", ""));
        fields.Finish();
        return concert;
    }

    private static List<MarkKind> ReadMarks(MapReader reader)
    {
        Dictionary<string, int> lines = [];
        List<MarkKind> kinds = [];
        foreach (MapReader fields in Each(reader, "marks", Marks, "a mark"))
        {
            string id = fields.Id("id");
            string[] spellings = [.. fields.Texts("spellings", Spellings).Select(spelling => spelling.ToLowerInvariant())];
            kinds.Add(new(id, fields.Text("words", id), spellings, fields.YesNo("praise") ?? false));
            UniqueCheck.Add(lines, fields, "id", id);
            fields.Finish();
        }

        return kinds;
    }
}
