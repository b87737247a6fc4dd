using WarmupConsole.Music.Rhythm;
using WarmupConsole.Storage.Plans;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Tempos in files: beats a minute, with up to three decimals.</summary>
internal static class TempoField
{
    internal static Tempo? Optional(MapReader reader, string name) =>
        reader.Optional(name) is { } node ? Read(reader, node, name) : null;

    internal static Tempo? Required(MapReader reader, string name) =>
        reader.Required(name) is { } node ? Read(reader, node, name) : null;

    internal static string Write(Tempo tempo) =>
        (tempo.MilliBeatsPerMinute / 1000m).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);

    private static Tempo? Read(MapReader reader, YamlNode node, string name) =>
        reader.Values.Number(node, name, PlanWords.Tempo) is { } number ? Tempo.FromMilliBeatsPerMinute((int)(number * 1000)) : null;
}
