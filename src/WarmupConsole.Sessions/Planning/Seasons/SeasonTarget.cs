using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>How far and how difficult a warm-up may be on a day (our own figures, after common practice: grow towards a concert, ease in its week).</summary>
/// <param name="Phase">Where the day lies.</param>
/// <param name="Concert">The concert that is prepared for, or null when none is near.</param>
/// <param name="WeeksLeft">Whole weeks to it; 0 without one.</param>
/// <param name="ReachPercent">How far beyond comfortable the peak may go, 0–100.</param>
/// <param name="Difficulty">How difficult its exercises may be, 0–100; see docs/planner.md.</param>
public sealed record SeasonTarget(SeasonPhase Phase, Concert? Concert, int WeeksLeft, int ReachPercent, int Difficulty)
{
    private const int DaysInWeek = 7;
    private const int GrowingWeeks = 12;
    private const int FirstReach = 40;
    private const int LastReach = 100;
    private const int FirstDifficulty = 40;
    private const int LastDifficulty = 90;
    private const int RoundTo = 5;

    /// <summary>The target of a day.</summary>
    public static SeasonTarget On(DateOnly day, IEnumerable<Concert> concerts)
    {
        ArgumentNullException.ThrowIfNull(concerts);
        Concert? next = concerts.Where(concert => concert.Date >= day && concert.Date < day.AddDays(GrowingWeeks * DaysInWeek)).MinBy(concert => concert.Date);
        int weeks = next is null ? 0 : (next.Date.DayNumber - day.DayNumber) / DaysInWeek;
        return next switch
        {
            null => new(SeasonPhase.Free, null, 0, 50, 50),
            _ when weeks == 0 => new(SeasonPhase.ConcertWeek, next, 0, 25, 35),
            _ => new(SeasonPhase.Growing, next, weeks, Grown(FirstReach, LastReach, weeks), Grown(FirstDifficulty, LastDifficulty, weeks)),
        };
    }

    /// <summary>Evenly from the first week to the last one before the concert's own.</summary>
    private static int Grown(int first, int last, int weeksLeft)
    {
        const int Steps = GrowingWeeks - 2;
        int grown = first + ((last - first) * (GrowingWeeks - 1 - weeksLeft) / Steps);
        return grown / RoundTo * RoundTo;
    }
}
