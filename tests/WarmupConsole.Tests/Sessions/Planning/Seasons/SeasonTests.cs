using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Tests.Sessions.Planning.Seasons;

public sealed class SeasonTests
{
    private static readonly Concert Spring = new(new(2027, 5, 22), "Spring concert");
    private static readonly DateOnly Today = new(2027, 3, 3);

    [Fact]
    public void Reach_and_difficulty_grow_towards_a_concert_and_ease_in_its_week()
    {
        SeasonTarget[] weeks = [.. Enumerable.Range(1, 11).Select(week => SeasonTarget.On(Spring.Date.AddDays(-7 * (12 - week)), [Spring]))];
        Assert.All(weeks.Zip(weeks.Skip(1)), pair => Assert.True(pair.First.ReachPercent < pair.Second.ReachPercent && pair.First.Difficulty <= pair.Second.Difficulty));
        Assert.Equal((40, 40, 11), (weeks[0].ReachPercent, weeks[0].Difficulty, weeks[0].WeeksLeft));
        Assert.Equal((100, 90, 1), (weeks[^1].ReachPercent, weeks[^1].Difficulty, weeks[^1].WeeksLeft));
        SeasonTarget week = SeasonTarget.On(Spring.Date.AddDays(-4), [Spring]);
        Assert.Equal(SeasonPhase.ConcertWeek, week.Phase);
        Assert.True(week.ReachPercent < weeks[0].ReachPercent && week.Difficulty < weeks[0].Difficulty);
    }

    [Theory]
    [InlineData("2027-02-27", SeasonPhase.Free, "no concert is near")]
    [InlineData("2027-02-28", SeasonPhase.Growing, "11 weeks before Spring concert")]
    [InlineData("2027-05-15", SeasonPhase.Growing, "1 week before Spring concert")]
    [InlineData("2027-05-16", SeasonPhase.ConcertWeek, "the week of Spring concert")]
    [InlineData("2027-05-22", SeasonPhase.ConcertWeek, "the week of Spring concert")]
    [InlineData("2027-05-23", SeasonPhase.Free, "no concert is near")]
    public void A_day_lies_in_a_phase(string day, SeasonPhase phase, string words)
    {
        SeasonTarget target = SeasonTarget.On(DateOnly.ParseExact(day, "yyyy-MM-dd"), [Spring]);
        Assert.Equal((phase, words), (target.Phase, SeasonTexts.Where(target)));
    }

    [Fact]
    public void The_calendar_has_what_was_led_what_is_planned_open_weeks_and_the_concert()
    {
        Season season = Season.Of(new([Spring], [Plan(new(2027, 2, 23)), Plan(new(2027, 3, 9))], [(new(2027, 2, 16), 19), (new(2027, 2, 23), 17)], Today));
        Assert.Equal(
            [(16, SeasonEntryKind.Led, true, 19), (23, SeasonEntryKind.Led, true, 17), (9, SeasonEntryKind.Planned, false, 15), (16, SeasonEntryKind.Open, false, null)],
            season.Entries.Take(4).Select(entry => (entry.Date.Day, entry.Kind, entry.IsPast, entry.Minutes)));
        Assert.Equal(SeasonEntryKind.Concert, season.Entries[^1].Kind);
        Assert.Equal("Tuesday", Assert.Single(season.Entries.Where(entry => entry.Kind == SeasonEntryKind.Open).Select(entry => entry.Date.DayOfWeek).Distinct()).ToString());
        Assert.Empty(season.Notes);
    }

    [Fact]
    public void Two_rehearsals_weeks_apart_could_be_bare_and_none_of_them_is_planned_so()
    {
        SeasonEntry[] proposed = [.. Season.Of(new([Spring], [Plan(new(2027, 3, 2))], [], Today)).Entries.Where(entry => entry.Kind == SeasonEntryKind.BareProposed)];
        Assert.Equal([6, 3], proposed.Select(entry => entry.Target.WeeksLeft));
        Assert.True(proposed[1].Date.DayNumber - proposed[0].Date.DayNumber >= 14);
    }

    [Theory]
    [InlineData("2027-03-30", new[] { 3 })]
    [InlineData("2027-04-27", new int[0])]
    public void A_bare_rehearsal_that_is_planned_counts(string day, int[] weeks)
    {
        Plan bare = new() { Date = DateOnly.ParseExact(day, "yyyy-MM-dd"), Bare = new(true, "as on the day"), Steps = [] };
        Season season = Season.Of(new([Spring], [Plan(new(2027, 3, 2)), bare], [], Today));
        Assert.Equal(weeks, season.Entries.Where(entry => entry.Kind == SeasonEntryKind.BareProposed).Select(entry => entry.Target.WeeksLeft));
        Plan second = bare with { Date = new(2027, 4, 13) };
        Assert.DoesNotContain(Season.Of(new([Spring], [bare, second], [], Today)).Entries, entry => entry.Kind == SeasonEntryKind.BareProposed);
    }

    [Fact]
    public void Without_a_concert_nothing_is_open_and_that_is_said()
    {
        Season season = Season.Of(new([new(new(2026, 12, 12), "Past concert")], [Plan(new(2027, 2, 23)), Plan(null)], [], Today));
        Assert.Equal([SeasonEntryKind.Concert, SeasonEntryKind.Planned], season.Entries.Select(entry => entry.Kind));
        Assert.Equal(2, season.Notes.Count);
        Assert.Empty(Season.Of(new([], [], [], Today)).Entries);
    }

    private static Plan Plan(DateOnly? date) => SamplePlans.Calm with { Date = date };
}
