using System.Text.Json;
using System.Text.Json.Serialization;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The ranges of every part as <c>warmup ranges --json</c> prints them: sounding pitches in the names of files.</summary>
internal sealed record RangesReport(IReadOnlyList<RangesReport.PartRanges> Parts)
{
    /// <summary>The file that it was written to; only after a command that writes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Written { get; init; }

    internal static RangesReport From(Choir choir, DateOnly day) => new([.. choir.Parts.Select(part => Of(part, day))]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.RangesReport);

    private static PartRanges Of(Part part, DateOnly day)
    {
        RangeEntry? entry = part.EntryOn(day);
        return new(
            part.Id,
            part.Name,
            part.Singers,
            PitchRangeText.Write(part.Range.Extreme),
            PitchRangeText.Write(part.Range.Comfortable),
            entry?.From is { } from ? DayText.Write(from) : null,
            entry?.IsStart ?? false,
            RangesText.IsDue(part, day));
    }

    /// <param name="Part">Id of the part.</param>
    /// <param name="Name">As it is shown.</param>
    /// <param name="Singers">How many there are; 0 when that is not said.</param>
    /// <param name="Extreme">What it can sing at all.</param>
    /// <param name="Comfortable">What it sings with ease.</param>
    /// <param name="Since">The day from which they hold; null where none is said.</param>
    /// <param name="IsStart">True for a start from a published table.</param>
    /// <param name="IsDue">True for changing voices that should be tested again.</param>
    internal sealed record PartRanges(string Part, string Name, int Singers, string Extreme, string Comfortable, string? Since, bool IsStart, bool IsDue);
}
