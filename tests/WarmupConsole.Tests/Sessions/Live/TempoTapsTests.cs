using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class TempoTapsTests
{
    [Theory]
    [InlineData("one tap says nothing", "0", null, 3)]
    [InlineData("three taps are too few", "0 0.5 1", null, 1)]
    [InlineData("four taps in half seconds", "0 0.5 1 1.5", 120.0, 0)]
    [InlineData("uneven taps: the mean of all of them", "0 0.7 1.3 2.1", 86.0, 0)]
    [InlineData("of many only the last eight count", "0 1 2 3 3.5 4 4.5 5 5.5 6 6.5", 120.0, 0)]
    [InlineData("the quickest tempo there is", "0 0.2 0.4 0.6", 300.0, 0)]
    [InlineData("the slowest tempo there is", "0 3 6 9", 20.0, 0)]
    [InlineData("a pause longer than the slowest beat begins anew", "0 2.9 5.8 8.9", null, 3)]
    [InlineData("a pause of more than two beats begins anew", "0 0.5 1 2.1", null, 3)]
    [InlineData("two beats are no pause", "0 0.5 1 2", 90.0, 0)]
    [InlineData("after the pause four are wanted again", "0 0.5 1 1.5 4 4.6 5.2 5.8", 100.0, 0)]
    [InlineData("a bounce is no tap", "0 0.02 0.5 0.52 1 1.5", 120.0, 0)]
    [InlineData("a key held down taps twice and no more", "0 0.5 0.53 0.56 0.6 0.63 0.67 0.7 0.73 0.77 0.8 0.83", null, 2)]
    public void The_mean_of_the_last_taps_is_the_tempo(string because, string seconds, double? bpm, int missing)
    {
        TempoTaps taps = seconds.Split(' ').Aggregate(TempoTaps.None, (before, second) => before.After(At(double.Parse(second, System.Globalization.CultureInfo.InvariantCulture))));

        Assert.Equal((because, bpm, missing), (because, taps.Mean?.BeatsPerMinute, taps.Missing));
    }

    [Fact]
    public void Taps_that_are_off_by_a_turn_of_the_screens_loop_give_the_tempo_within_one_beat_a_minute()
    {
        Random random = new(3);
        foreach (int bpm in Enumerable.Range(40, 101))
        {
            TempoTaps taps = Enumerable.Range(0, TempoTaps.Most).Aggregate(
                TempoTaps.None,
                (before, tap) => before.After(At((tap * 60.0 / bpm) + (random.NextDouble() / 120))));

            Assert.InRange(taps.Mean!.Value.BeatsPerMinute, bpm - Math.Ceiling(bpm / 120.0), bpm + Math.Ceiling(bpm / 120.0));
        }
    }

    [Fact]
    public void The_fourth_tap_goes_on_from_the_present_beat_at_its_tempo()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        Beats start = driver.Session.StateStart;
        driver.Act(LiveAction.TapTempo);
        Assert.Equal("tapping: 3 to go", driver.Session.Notice?.Text);
        driver.Pass(0.75).Act(LiveAction.TapTempo).Pass(0.75).Act(LiveAction.TapTempo);
        Assert.Equal("tapping: 1 to go", driver.Session.Notice?.Text);
        Assert.Empty(driver.Newest);

        driver.Pass(0.75).Act(LiveAction.TapTempo);

        Timeline timeline = driver.Newest.OfType<LiveEffect.SetTimeline>().Single().Timeline;
        Assert.Equal((Tempo.FromBeatsPerMinute(80), "tapped: 80 bpm"), (timeline.Tempo, driver.Session.Notice?.Text));
        Assert.Equal(start + new Beats(2160), timeline.BeatAt(driver.Now)); // 2.25 s at 60
        Assert.Empty(driver.Newest.OfType<LiveEffect.Silence>());
    }

    [Fact]
    public void A_fifth_tap_goes_on_refining_it()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        foreach (double gap in new[] { 0, 0.75, 0.75, 0.75, 0.65 })
        {
            driver.Pass(gap).Act(LiveAction.TapTempo);
        }

        Assert.Equal(Tempo.FromBeatsPerMinute(83), driver.Session.Tempo); // 4 intervals of 2.9 s together
    }

    [Fact]
    public void While_nothing_runs_only_the_log_hears_of_a_tapped_tempo()
    {
        LiveDriver driver = LiveSituations.InMiddleStep();
        foreach (int tap in Enumerable.Range(0, 4))
        {
            driver.Pass(tap == 0 ? 0 : 0.5).Act(LiveAction.TapTempo);
        }

        Assert.Empty(driver.Newest.OfType<LiveEffect.SetTimeline>());
        Assert.Equal(120_000, driver.NewestEvents.OfType<TimelineChanged>().Single().MilliBpm);
        Assert.Equal(Tempo.FromBeatsPerMinute(120), driver.Act(LiveAction.GoOn).Session.Timeline.Tempo);
    }

    private static Moment At(double seconds) => new((long)Math.Round(seconds * 1e9));
}
