using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>Sentences about the season.</summary>
public static class SeasonTexts
{
    /// <summary>"5 weeks before Spring concert".</summary>
    public static string Where(SeasonTarget season)
    {
        ArgumentNullException.ThrowIfNull(season);
        return season switch
        {
            { Concert: null } => "no concert is near",
            { Phase: SeasonPhase.ConcertWeek } => $"the week of {Title(season)}",
            { WeeksLeft: 1 } => $"1 week before {Title(season)}",
            _ => $"{season.WeeksLeft} weeks before {Title(season)}",
        };
    }

    internal const string NoConcert = "No concert is ahead: reach and difficulty stay where they are. Add the next one to choir.yaml under 'concerts'.";

    internal static string Undated(int plans) => $"{plans} plan{(plans == 1 ? "" : "s")} without a date are left out: name their files after their day, or write 'date' into them.";

    private static string Title(SeasonTarget season) => MarkText.Clean(season.Concert!.Title) is { Length: > 0 } title ? title : "the concert";
}
