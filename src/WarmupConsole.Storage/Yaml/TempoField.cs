using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Tempos in files: beats a minute, with up to three decimals.</summary>
internal static class TempoField
{
    internal static Tempo? Read(MapReader reader, string name) =>
        reader.Number(name) is { } number ? Tempo.FromMilliBeatsPerMinute((int)(number * 1000)) : null;

    internal static string Write(Tempo tempo) =>
        (tempo.MilliBeatsPerMinute / 1000m).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
