using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>Reads the parts of a choir; ids and letters must tell them apart.</summary>
internal static class PartsReader
{
    internal static List<Part> Read(MapReader choir)
    {
        Dictionary<string, int> ids = [];
        Dictionary<string, int> letters = [];
        List<Part> parts = [];
        foreach (MapReader fields in choir.Maps("parts"))
        {
            parts.Add(ReadPart(fields, ids));
            CheckLetters(fields, parts[^1], letters);
            fields.Finish();
        }

        return parts;
    }

    private static Part ReadPart(MapReader fields, Dictionary<string, int> ids)
    {
        string id = fields.Id("id");
        UniqueCheck.Add(ids, fields, "id", id);
        string name = fields.Text("name", Capital(id));
        IReadOnlyList<string> letters = fields.Texts("letters");
        IReadOnlyList<RangeEntry> history = RangesReader.ReadHistory(fields);
        Part part = new(
            id,
            name,
            letters.Count > 0 ? [.. letters.Select(letter => letter.ToLowerInvariant())] : DefaultLetters(name),
            ReadGroups(fields),
            fields.Whole("singers") ?? 0,
            fields.Whole("placement") ?? 0,
            new(default, default))
        {
            History = history,
        };
        CheckReserved(fields, "id", id);
        return part.AsOf(DateOnly.MaxValue);
    }

    private static List<string> ReadGroups(MapReader fields)
    {
        List<string> groups = [];
        foreach (YamlNode node in fields.Items("groups"))
        {
            if (fields.Values.Id(node, "groups") is { } group && group != LadderSpec.Everyone)
            {
                groups.Add(group);
            }
        }

        return groups;
    }

    /// <summary>First letter and plural of the name.</summary>
    private static string[] DefaultLetters(string name) =>
        name.Length == 0 ? [] : [name[..1].ToLowerInvariant(), PartPlural.OfName(name.ToLowerInvariant())];

    private static string Capital(string id) => id.Length == 0 ? "" : char.ToUpperInvariant(id[0]) + id[1..];

    private static void CheckReserved(MapReader fields, string field, string value)
    {
        if (value is LadderSpec.Everyone or LadderSpec.AnyPart)
        {
            fields.Problems.Add(fields.Find(field)!, StorageTexts.ReservedName(value));
        }
    }

    private static void CheckLetters(MapReader fields, Part part, Dictionary<string, int> lines)
    {
        foreach (string letter in part.Letters.Distinct())
        {
            UniqueCheck.Add(lines, fields, "letters", letter);
        }
    }
}
