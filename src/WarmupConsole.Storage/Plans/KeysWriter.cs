using System.Globalization;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Writes 'keys' so that they read back as themselves.</summary>
internal static class KeysWriter
{
    internal static readonly LadderSpec Usual = new();

    /// <summary>A field on each line; what is as usual is left out where a reader would not miss it.</summary>
    internal static IEnumerable<string> Lines(LadderSpec keys) => ((IEnumerable<(string Name, string? Value)>)
    [
        ("start", keys.Start is { } start ? YamlLine.Quote(start.ToAscii()) : null),
        ("shape", PlanWords.Shapes.Name(keys.Shape)),
        ("limit", YamlLine.Quote(keys.Limit)),
        ("reach", Number(keys.ReachPercent)),
        ("tolerance", Number(keys.ToleranceSemitones)),
        ("by", keys.StepSemitones == Usual.StepSemitones ? null : Number(keys.StepSemitones)),
        ("octave", keys.TakesOctave ? "true" : null),
        ("most", Number(keys.MostKeys)),
    ]).Where(field => field.Value is not null).Select(field => $"{field.Name}: {field.Value}");

    private static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
