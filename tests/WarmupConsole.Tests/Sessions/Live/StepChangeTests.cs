using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>Repeat, step back, step on, phases at the director's pace, and the end.</summary>
public class StepChangeTests
{
    [Fact]
    public void Repeating_a_rung_silences_it_and_leads_in_to_it_again()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        long before = driver.Session.Generation;

        driver.Pass(2).Act(LiveAction.Repeat);

        Assert.Equal((LiveState.Cue, 1), (driver.Session.State, driver.Session.RungIndex));
        Assert.Equal(new RungEnded(1, 1, Whole: false), driver.NewestEvents[0]);
        Assert.Contains(new LiveEffect.Silence(before + 1), driver.Newest);
        Assert.Equal(driver.Now + TimeSpan.FromSeconds(4), driver.Session.Timeline.TimeAt(Beats.Zero));
    }

    [Fact]
    public void Repeating_in_the_breath_takes_the_key_just_sung() =>
        Assert.Equal(1, LiveSituations.Of(LiveState.Breath).Act(LiveAction.Repeat).Session.RungIndex);

    [Fact]
    public void Repeating_a_phase_begins_its_round_again()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Phase).Pass(13).Pass(5).Act(LiveAction.Repeat);

        Assert.Equal((1, 0), (driver.Session.RoundIndex, driver.Session.PhaseIndex));
        Assert.Contains(new RoundStarted(1, 1), driver.NewestEvents);
    }

    [Fact]
    public void Going_on_in_a_phase_takes_the_next_one_at_once_and_the_next_step_after_the_last()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Phase).Act(LiveAction.GoOn);
        Assert.Equal((0, 1), (driver.Session.RoundIndex, driver.Session.PhaseIndex));
        Assert.Equal(driver.Now + TimeSpan.FromSeconds(2), driver.Session.NextWake);

        driver.Act(LiveAction.GoOn, LiveAction.GoOn);
        Assert.Equal((1, 0), (driver.Session.RoundIndex, driver.Session.PhaseIndex));

        driver.Act(LiveAction.GoOn, LiveAction.GoOn, LiveAction.GoOn);
        Assert.Equal((LiveState.Introduce, 2), (driver.Session.State, driver.Session.StepIndex));
    }

    [Theory]
    [InlineData(LiveAction.StepBack, 0)]
    [InlineData(LiveAction.StepOn, 2)]
    public void Another_step_is_introduced_in_silence_with_its_own_tempo_and_a_fresh_clock(LiveAction action, int step)
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.Faster).Pass(3).Act(action);

        Assert.Equal((LiveState.Introduce, step, 0), (driver.Session.State, driver.Session.StepIndex, driver.Session.RungIndex));
        Assert.Equal(LiveFixtures.Whole.Steps[step].Tempo, driver.Session.Tempo);
        Assert.Equal(TimeSpan.Zero, driver.Session.Clocks.StepAt(driver.Now));
        Assert.Equal(new LiveEffect.Silence(driver.Session.Generation), driver.Newest.OfType<LiveEffect.Silence>().Single());
        Assert.Equal(new RungEnded(1, 1, Whole: false), driver.NewestEvents[0]);
    }

    [Fact]
    public void Stepping_on_out_of_a_pause_ends_the_pause()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Rung, Hold.Paused).Act(LiveAction.StepOn);

        Assert.Equal((Hold.None, true), (driver.Session.Hold, driver.Session.Clocks.IsRunning));
        Assert.Equal(new HoldChanged("none"), driver.NewestEvents[0]);
    }

    [Fact]
    public void The_end_silences_stops_the_clocks_and_says_that_it_was_ended()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.End);

        Assert.Equal(new RunEnded("ended"), driver.NewestEvents[^1]);
        Assert.Contains(new LiveEffect.Silence(driver.Session.Generation), driver.Newest);
        Assert.Equal((LiveState.Finished, false), (driver.Session.State, driver.Session.Clocks.IsRunning));
    }
}
