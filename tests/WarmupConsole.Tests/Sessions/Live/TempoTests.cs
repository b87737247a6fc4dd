using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class TempoTests
{
    [Theory]
    [InlineData(20, 22, null)]
    [InlineData(58, 60, 56)]
    [InlineData(60, 63, 58)]
    [InlineData(72, 76, 69)]
    [InlineData(88, 92, 84)]
    [InlineData(120, 126, 116)]
    [InlineData(144, 152, 138)]
    [InlineData(208, 216, 200)]
    [InlineData(296, 300, 288)]
    [InlineData(300, null, 296)]
    public void Steps_are_those_of_a_clockwork_metronome(int bpm, int? faster, int? slower)
    {
        Tempo tempo = Tempo.FromBeatsPerMinute(bpm);

        Assert.Equal(faster, (int?)MetronomeSteps.Faster(tempo)?.BeatsPerMinute);
        Assert.Equal(slower, (int?)MetronomeSteps.Slower(tempo)?.BeatsPerMinute);
    }

    [Fact]
    public void A_tempo_between_two_marks_goes_to_the_nearest_in_the_direction()
    {
        Tempo tempo = Tempo.FromMilliBeatsPerMinute(61_500);

        Assert.Equal(Tempo.FromBeatsPerMinute(63), MetronomeSteps.Faster(tempo));
        Assert.Equal(Tempo.FromBeatsPerMinute(60), MetronomeSteps.Slower(tempo));
    }

    [Fact]
    public void While_beats_run_a_new_timeline_goes_on_from_the_present_beat()
    {
        LiveDriver driver = LiveSituations.SecondRung().Pass(3).Act(LiveAction.Faster);

        Timeline timeline = driver.Newest.OfType<LiveEffect.SetTimeline>().Single().Timeline;
        Assert.Equal(Tempo.FromBeatsPerMinute(63), timeline.Tempo);
        Assert.Equal(Beats.FromBeats(14), timeline.BeatAt(driver.Now));
        Assert.Equal(Beats.FromBeats(20), driver.Session.StateEnd);
        Assert.Equal(new TimelineChanged(63_000, timeline.BeatOrigin.Ticks, timeline.TimeOrigin.Nanoseconds), driver.NewestEvents.Single());
        Assert.Empty(driver.Newest.OfType<LiveEffect.Silence>());
    }

    [Fact]
    public void While_nothing_runs_only_the_log_hears_of_it()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Act(LiveAction.Slower);

        Assert.Equal(Tempo.FromBeatsPerMinute(58), driver.Session.Tempo);
        Assert.Empty(driver.Newest.OfType<LiveEffect.SetTimeline>());
        Assert.Equal(58_000, driver.NewestEvents.OfType<TimelineChanged>().Single().MilliBpm);
        Assert.Equal(driver.Session.Tempo, driver.Act(LiveAction.GoOn).Session.Timeline.Tempo);
    }

    [Fact]
    public void A_new_tempo_while_it_waits_is_led_in_to()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Wait).Act(LiveAction.Faster, LiveAction.GoOn);

        Assert.Equal((LiveState.Cue, 2), (driver.Session.State, driver.Session.RungIndex));
        Assert.Equal(Tempo.FromBeatsPerMinute(63), driver.Session.Timeline.Tempo);
    }
}
