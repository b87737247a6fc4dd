using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>The season for a director to read: a line a day, today between past and coming, and the card about bare rehearsals where one is proposed.</summary>
internal static class CalendarText
{
    internal static string Write(Season season, DateOnly today)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"{"day",-15} {"",-20} {"minutes",7} {"reach",6} {"difficulty",10}\n");
        bool isTodayShown = false;
        foreach (SeasonEntry entry in season.Entries)
        {
            if (!isTodayShown && !entry.IsPast)
            {
                text.Append(CultureInfo.InvariantCulture, $"{Day(today)}  --- {AppTexts.TodayLine} ---\n");
                isTodayShown = true;
            }

            text.Append(Line(entry).TrimEnd()).Append('\n');
        }

        IEnumerable<string> notes = [.. season.Notes, .. season.Entries.Any(entry => entry.Kind == SeasonEntryKind.BareProposed) ? AppTexts.BareCard : [], AppTexts.SeasonLegend];
        return text.Append('\n').Append(string.Join('\n', notes)).Append('\n').ToString();
    }

    internal static string Word(SeasonEntryKind kind) => kind switch
    {
        SeasonEntryKind.Led => "warm-up led",
        SeasonEntryKind.Planned => "warm-up planned",
        SeasonEntryKind.Open => "warm-up to plan",
        SeasonEntryKind.Bare => "no warm-up",
        SeasonEntryKind.BareProposed => "could be without",
        _ => "concert",
    };

    private static string Line(SeasonEntry entry)
    {
        bool hasTarget = entry.Kind is not (SeasonEntryKind.Concert or SeasonEntryKind.Bare);
        string minutes = entry.Minutes?.ToString(CultureInfo.InvariantCulture) ?? "";
        string reach = hasTarget ? $"{entry.Target.ReachPercent} %" : "";
        string difficulty = hasTarget ? entry.Target.Difficulty.ToString(CultureInfo.InvariantCulture) : "";
        string words = Printable.Line(entry.Title.Length > 0 ? entry.Title : entry.Target.Phase == SeasonPhase.Free ? "" : SeasonTexts.Where(entry.Target));
        return $"{Day(entry.Date),-15} {Word(entry.Kind),-20} {minutes,7} {reach,6} {difficulty,10}  {words}";
    }

    private static string Day(DateOnly day) => day.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture);
}
