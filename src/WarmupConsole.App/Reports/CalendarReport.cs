using System.Text.Json;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The season as <c>warmup season --json</c> prints it.</summary>
internal sealed record CalendarReport(IReadOnlyList<CalendarReport.Day> Days, IReadOnlyList<string> Notes)
{
    internal static CalendarReport From(Season season) => new([.. season.Entries.Select(Of)], season.Notes);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.CalendarReport);

    private static Day Of(SeasonEntry entry) => new(
        DayText.Write(entry.Date),
        entry.Kind switch
        {
            SeasonEntryKind.Led => "led",
            SeasonEntryKind.Planned => "planned",
            SeasonEntryKind.Open => "open",
            SeasonEntryKind.Bare => "bare",
            SeasonEntryKind.BareProposed => "bare-proposed",
            _ => "concert",
        },
        entry.IsPast,
        entry.Title,
        entry.Minutes,
        entry.Target.ReachPercent,
        entry.Target.Difficulty,
        entry.Target.Concert is { } concert ? DayText.Write(concert.Date) : null,
        entry.Target.Concert is null ? null : entry.Target.WeeksLeft);

    /// <summary>A day; the concert is the next one within twelve weeks, or null.</summary>
    internal sealed record Day(string Date, string Kind, bool Past, string Title, int? Minutes, int ReachPercent, int Difficulty, string? Concert, int? WeeksLeft);
}
