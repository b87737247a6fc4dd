using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>A tempo that the plan changes from key to key: 60, 72, 84 in three keys of 9 beats with breaths of 2.</summary>
public class GradualTempoTests
{
    private static readonly Warmup Upwards = LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.Scale) with
    {
        Keys = new() { MostKeys = 3, Shape = LadderShape.Up },
        Tempo = Bpm(60),
        LastTempo = Bpm(84),
    });

    [Theory]
    [InlineData(60, 84, 3, "60 72 84")]
    [InlineData(84, 60, 4, "84 76 68 60")]
    [InlineData(60, 61, 4, "60 60.333 60.666 61")]
    [InlineData(60, 84, 1, "60")]
    [InlineData(60, 60, 3, "60 60 60")]
    public void It_changes_evenly_and_meets_the_last_one_exactly(int first, int last, int keys, string expected)
    {
        KeyTempos tempos = new(Bpm(first), Bpm(last), keys);

        Assert.Equal(expected, string.Join(' ', Enumerable.Range(0, keys).Select(key => tempos.At(key).ToString().Replace(" bpm", ""))));
        Assert.Equal(tempos.At(keys - 1), keys == 1 ? Bpm(first) : tempos.At(keys + 5));
    }

    [Fact]
    public void Each_key_is_sung_at_its_own() => Assert.Equal([60_000, 72_000, 84_000], Sung(Lead()));

    [Fact]
    public void The_cue_chords_before_a_key_have_its_tempo_already_and_the_beat_at_which_it_changes_stays_where_it_was()
    {
        LiveDriver driver = Lead().RunTo(LiveState.Rung);
        Timeline before = driver.Session.Timeline;
        Beats end = driver.Session.StateEnd!.Value;
        driver.RunTo(LiveState.Breath);

        Timeline after = driver.Newest.OfType<LiveEffect.SetTimeline>().Single().Timeline;
        Assert.Equal(new Timeline(Bpm(72), end, before.TimeAt(end)), after);
        Assert.Empty(driver.Newest.OfType<LiveEffect.Silence>());
        Assert.Equal(after.TimeAt(end + Beats.FromBeats(2)), driver.Session.NextWake);
    }

    [Fact]
    public void However_late_time_is_told_it_changes_at_the_same_beat()
    {
        LiveDriver driver = Lead().Pass(60);
        Timeline[] timelines = [.. driver.Effects.OfType<LiveEffect.SetTimeline>().Select(set => set.Timeline)];

        Assert.Equal([Beats.FromBeats(-4), Beats.FromBeats(9), Beats.FromBeats(20)], timelines.Select(timeline => timeline.BeatOrigin));
        Assert.Equal(timelines[0].TimeAt(Beats.FromBeats(9)), timelines[1].TimeOrigin);
        Assert.Equal(timelines[1].TimeAt(Beats.FromBeats(20)), timelines[2].TimeOrigin);
    }

    [Fact]
    public void What_the_director_changes_is_kept_and_the_plan_goes_on_from_there()
    {
        LiveDriver driver = Lead().RunTo(LiveState.Rung).Act(LiveAction.Faster);

        Assert.Equal([60_000, 75_000, 87_000], Sung(driver));
    }

    [Fact]
    public void A_key_sung_again_has_its_own_tempo_again()
    {
        LiveDriver driver = Lead().RunTo(LiveState.Breath).Act(LiveAction.Repeat);
        Assert.Equal(Bpm(60), driver.Session.Tempo);

        Assert.Equal([60_000, 60_000, 72_000, 84_000], Sung(driver));
    }

    [Fact]
    public void Where_it_waits_at_each_key_going_on_needs_no_new_lead_in()
    {
        LiveDriver driver = Lead().Act(LiveAction.RollOrWait).RunTo(LiveState.Wait).Pass(20).Act(LiveAction.GoOn);

        Assert.Equal((LiveState.Breath, Bpm(72), Bpm(72)), (driver.Session.State, driver.Session.Tempo, driver.Session.Timeline.Tempo));
    }

    [Fact]
    public void A_change_while_it_waits_is_one_of_the_next_keys_tempo()
    {
        LiveDriver driver = Lead().Act(LiveAction.RollOrWait).RunTo(LiveState.Wait).Act(LiveAction.Slower);
        Assert.Equal(Bpm(69), driver.Session.Tempo);

        driver.Act(LiveAction.GoOn);
        Assert.Equal((LiveState.Cue, 1, Bpm(69)), (driver.Session.State, driver.Session.RungIndex, driver.Session.Timeline.Tempo));
    }

    [Fact]
    public void One_more_key_keeps_the_last_tempo()
    {
        LiveDriver driver = Lead().Act(LiveAction.OneMoreKey);

        Assert.Equal([60_000, 72_000, 84_000, 84_000], Sung(driver));
    }

    [Fact]
    public void A_run_cut_off_anywhere_goes_on_at_the_tempo_it_would_have_had()
    {
        LiveDriver driver = Lead();
        while (driver.Session.State != LiveState.Finished)
        {
            SessionFacts facts = SessionFacts.Fold(driver.Events);
            LiveSession resumed = LiveMachine.Resume(Upwards, facts, driver.Now).Session;
            LiveSession led = LiveMachine.Handle(resumed, new LiveInput.Act(LiveAction.GoOn), driver.Now).Session;
            Assert.Equal(Upwards.Steps[0].Tempos.At(led.RungIndex), led.Timeline.Tempo);
            driver.Now = driver.Session.NextWake!.Value;
            driver.Send(new LiveInput.TimePassed());
        }
    }

    [Fact]
    public void The_plan_and_the_timers_reckon_with_it()
    {
        double planned = 10 + (13 * 60 / 60.0) + (11 * 60 / 72.0) + (13 * 60 / 84.0);
        Assert.Equal(planned, Upwards.Steps[0].Planned.TotalSeconds, 5);

        LiveDriver driver = Lead();
        foreach (double seconds in new[] { 0.5, 5, 10, 6, 8 })
        {
            driver.Pass(seconds);
            LiveTimers timers = LiveTimers.At(driver.Session, driver.Now);
            Assert.Equal(planned - 10, timers.StepProjected.TotalSeconds, tolerance: 0.002); // a tick
        }
    }

    private static LiveDriver Lead() => new LiveDriver(Upwards).Act(LiveAction.GoOn, LiveAction.GoOn);

    private static int[] Sung(LiveDriver driver)
    {
        driver.RunTo(LiveState.Finished);
        return [.. driver.Events.OfType<RungStarted>().Select(rung => rung.MilliBpm)];
    }

    private static Tempo Bpm(int bpm) => Tempo.FromBeatsPerMinute(bpm);
}
