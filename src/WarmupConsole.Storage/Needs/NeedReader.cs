using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Needs;

/// <summary>Reads one need and looks its names up.</summary>
internal static class NeedReader
{
    internal static ChoirNeed Read(MapReader fields, Choir choir)
    {
        ChoirNeed need = new()
        {
            Who = Who(fields, choir),
            Pitch = PitchField.Read(fields, "pitch"),
            Region = fields.Find("region") is { } region ? MusicField.Read(fields, region, "region", PitchRangeText.Parse)?.Value : null,
            Purpose = fields.Choice<Purpose>("purpose"),
            Kind = Kind(fields, choir),
            Piece = fields.Text("piece", ""),
            Bars = fields.Text("bars", ""),
            Until = fields.Date("until"),
            Done = fields.Date("done"),
        };
        if (NeedFields.Kinds.Count(name => fields.Find(name) is not null) != 1)
        {
            fields.Problems.Add(fields.Place, StorageTexts.NeedOfOneKind);
        }

        fields.Finish();
        return need;
    }

    private static string Who(MapReader fields, Choir choir)
    {
        if (fields.Find("part") is not { } node || fields.Values.Id(node, "part") is not { } id)
        {
            return LadderSpec.Everyone;
        }

        List<string> names = [LadderSpec.Everyone, .. choir.Parts.Select(part => part.Id), .. choir.Parts.SelectMany(part => part.Groups).Distinct()];
        if (!names.Contains(id))
        {
            fields.Problems.Add(node, StorageTexts.UnknownLimit(id, names));
        }

        return id;
    }

    private static string Kind(MapReader fields, Choir choir)
    {
        if (fields.Find("kind") is not { } node || fields.Values.Id(node, "kind") is not { } id)
        {
            return "";
        }

        if (MarkKindData.Find(choir, id) is null)
        {
            fields.Problems.Add(node, StorageTexts.UnknownMarkKind(id, MarkKindData.Of(choir).Select(kind => kind.Id).Distinct()));
        }

        return id;
    }
}
