using System.Text.Json;
using System.Text.Json.Serialization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>Needs with their numbers as <c>warmup need list --json</c> prints them.</summary>
internal sealed record NeedsReport(IReadOnlyList<NeedsReport.Need> Needs)
{
    /// <summary>The file that it was written to; only after a command that writes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Written { get; init; }

    internal static NeedsReport From(IEnumerable<(int Number, ChoirNeed Need)> needs) => new([.. needs.Select(need => Of(need.Number, need.Need))]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.NeedsReport);

    private static Need Of(int number, ChoirNeed need) => new(
        number,
        need.Who,
        need.Pitch?.ToAscii(),
        need.Region is { } region ? PitchRangeText.Write(region) : null,
        need.Purpose is { } purpose ? PurposeData.Id(purpose) : null,
        need.Kind.Length == 0 ? null : need.Kind,
        need.Piece,
        need.Bars,
        Day(need.Until),
        Day(need.Done));

    private static string? Day(DateOnly? day) => day is { } known ? DayText.Write(known) : null;

    /// <summary>The fields of needs.yaml; null where a need has none.</summary>
    internal sealed record Need(int Number, string Part, string? Pitch, string? Region, string? Purpose, string? Kind, string Piece, string Bars, string? Until, string? Done);
}
