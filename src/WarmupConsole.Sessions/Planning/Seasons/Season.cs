using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>The calendar of past and coming warm-ups, concerts and bare rehearsals.</summary>
/// <param name="Entries">The oldest first.</param>
/// <param name="Notes">What the director should know, in sentences.</param>
public sealed record Season(IReadOnlyList<SeasonEntry> Entries, IReadOnlyList<string> Notes)
{
    private const int DaysInWeek = 7;

    /// <summary>How far back and ahead it looks.</summary>
    private const int WeeksBack = 26;
    private const int WeeksAhead = 26;

    /// <summary>Weeks before the concert in which a rehearsal could be bare, by common practice once or twice and weeks apart.</summary>
    private static readonly int[] BareWeeks = [6, 3];

    /// <summary>Makes the calendar.</summary>
    public static Season Of(SeasonInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        SeasonEntry[] known = [.. Known(input)];
        SeasonEntry[] open = [.. Open(input, known)];
        SeasonEntry[] all = [.. known.Concat(open).OrderBy(entry => entry.Date).ThenBy(entry => entry.Kind)];
        Concert? next = input.Concerts.Where(concert => concert.Date >= input.Today).MinBy(concert => concert.Date);
        return new([.. all.Where(entry => IsNear(entry, input.Today)).Select(entry => Proposed(entry, all, next))], [.. NotesOn(input, next)]);
    }

    private static bool IsNear(SeasonEntry entry, DateOnly today) =>
        entry.Date >= today.AddDays(-WeeksBack * DaysInWeek) && entry.Date <= today.AddDays(WeeksAhead * DaysInWeek);

    private static IEnumerable<SeasonEntry> Known(SeasonInput input)
    {
        SeasonEntry Make(DateOnly date, SeasonEntryKind kind, string title, int? minutes) =>
            new(date, kind, date < input.Today, title) { Target = SeasonTarget.On(date, input.Concerts), Minutes = minutes };
        HashSet<DateOnly> led = [.. input.Led.Select(led => led.Day)];
        return
        [
            .. input.Concerts.Select(concert => Make(concert.Date, SeasonEntryKind.Concert, concert.Title, null)),
            .. input.Led.Select(one => Make(one.Day, SeasonEntryKind.Led, input.Plans.FirstOrDefault(plan => plan.Date == one.Day)?.Title ?? "", one.Minutes)),
            .. input.Plans.Where(plan => plan.Date is { } date && !led.Contains(date))
                .Select(plan => Make(plan.Date!.Value, plan.Bare is null ? SeasonEntryKind.Planned : SeasonEntryKind.Bare, plan.Title, plan.Bare is null ? plan.Minutes : null)),
        ];
    }

    /// <summary>The usual day of the week until the last concert, where nothing is planned within three days.</summary>
    private static IEnumerable<SeasonEntry> Open(SeasonInput input, SeasonEntry[] known)
    {
        SeasonEntry? newest = known.Where(entry => entry.Kind != SeasonEntryKind.Concert).MaxBy(entry => entry.Date);
        DateOnly? until = input.Concerts.Where(concert => concert.Date >= input.Today).MaxBy(concert => concert.Date)?.Date;
        int weekday = newest is null ? 0 : (((newest.Date.DayNumber - input.Today.DayNumber) % DaysInWeek) + DaysInWeek) % DaysInWeek;
        for (DateOnly day = input.Today.AddDays(weekday); until is not null && day <= until; day = day.AddDays(DaysInWeek))
        {
            if (!known.Any(entry => entry.Kind != SeasonEntryKind.Concert && Math.Abs(entry.Date.DayNumber - day.DayNumber) < 3) && !input.Concerts.Any(concert => concert.Date == day))
            {
                yield return new(day, SeasonEntryKind.Open, false, "") { Target = SeasonTarget.On(day, input.Concerts) };
            }
        }
    }

    /// <summary>An open day six or three weeks before the next concert could be bare, as long as fewer than two are and none is near.</summary>
    private static SeasonEntry Proposed(SeasonEntry entry, SeasonEntry[] all, Concert? next)
    {
        bool isMeant = entry.Kind == SeasonEntryKind.Open && next is not null && entry.Target.Concert == next && BareWeeks.Contains(entry.Target.WeeksLeft);
        SeasonEntry[] bare = [.. all.Where(other => other.Kind == SeasonEntryKind.Bare && other.Target.Concert == next)];
        bool isFree = bare.Length < BareWeeks.Length && bare.All(other => Math.Abs(other.Date.DayNumber - entry.Date.DayNumber) >= 2 * DaysInWeek)
            && (bare.Length == 0 || entry.Target.WeeksLeft == BareWeeks[^1]);
        return isMeant && isFree ? entry with { Kind = SeasonEntryKind.BareProposed } : entry;
    }

    private static IEnumerable<string> NotesOn(SeasonInput input, Concert? next)
    {
        if (next is null)
        {
            yield return SeasonTexts.NoConcert;
        }

        int undated = input.Plans.Count(plan => plan.Date is null);
        if (undated > 0)
        {
            yield return SeasonTexts.Undated(undated);
        }
    }
}
