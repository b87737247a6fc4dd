using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Choirs;

/// <summary>Reads the ranges of a part: the plain ones, and those that count from a day on.</summary>
internal static class RangesReader
{
    /// <summary>Oldest first where they stand so; at least the plain ranges or one dated entry must be there.</summary>
    internal static IReadOnlyList<RangeEntry> ReadHistory(MapReader part)
    {
        MapReader[] dated = [.. part.Maps("ranges")];
        bool hasPlain = part.Find("extreme") is not null || part.Find("comfortable") is not null;
        bool isStart = part.YesNo("start") ?? false;
        VoiceRange? plain = hasPlain || dated.Length == 0 ? Read(part) : null;
        return [.. plain is null ? (RangeEntry[])[] : [new(null, plain, isStart)], .. ReadDated(dated)];
    }

    /// <summary>The two ranges of a part or an entry, or null when anything is wrong with them.</summary>
    internal static VoiceRange? Read(MapReader fields)
    {
        PitchRange? extreme = Range(fields, "extreme");
        PitchRange? comfortable = Range(fields, "comfortable");
        if (extreme is not { } outer || comfortable is not { } inner)
        {
            return null;
        }

        if (!outer.Contains(inner))
        {
            string message = StorageTexts.ComfortableOutside(PitchRangeText.Write(inner), PitchRangeText.Write(outer));
            fields.Problems.Add(fields.Find("comfortable")!, message);
            return null;
        }

        return new(outer, inner);
    }

    private static List<RangeEntry> ReadDated(MapReader[] dated)
    {
        Dictionary<string, int> days = [];
        List<RangeEntry> entries = [];
        foreach (MapReader fields in dated)
        {
            DateOnly? from = fields.Date("from");
            UniqueCheck.Add(days, fields, "from", from is { } day ? DayText.Write(day) : "");
            if (Read(fields) is { } range && from is not null)
            {
                entries.Add(new(from, range, IsStart: false));
            }

            fields.Finish();
        }

        return entries;
    }

    private static PitchRange? Range(MapReader fields, string name) =>
        fields.Require(name) is { } node ? MusicField.Read(fields, node, name, PitchRangeText.Parse)?.Value : null;
}
