using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class HoldTests
{
    [Fact]
    public void Silence_breaks_the_rung_off_and_going_on_leads_in_to_it_again()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.Silence);

        Assert.Equal(new SessionEvent[] { new RungEnded(1, 1, Whole: false), new HoldChanged("silenced") }, driver.NewestEvents);
        Assert.Null(driver.Session.NextWake);
        driver.Pass(10).Act(LiveAction.GoOn);

        Assert.Equal((LiveState.Cue, Hold.None, 1), (driver.Session.State, driver.Session.Hold, driver.Session.RungIndex));
        Assert.Equal(new HoldChanged("none"), driver.NewestEvents[0]);
        Assert.Contains(new LeadInStarted(1, 1), driver.NewestEvents);
    }

    [Fact]
    public void After_a_hold_in_the_breath_the_next_key_is_led_in_to_since_the_last_was_whole()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Breath, Hold.Silenced).Act(LiveAction.GoOn);

        Assert.Equal((LiveState.Cue, 2), (driver.Session.State, driver.Session.RungIndex));
    }

    [Fact]
    public void Repeating_out_of_a_hold_in_the_breath_takes_the_key_just_sung()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Breath, Hold.Silenced).Act(LiveAction.Repeat);

        Assert.Equal((LiveState.Cue, Hold.None, 1), (driver.Session.State, driver.Session.Hold, driver.Session.RungIndex));
    }

    [Fact]
    public void A_pause_stops_the_clocks_and_silence_does_not()
    {
        LiveDriver paused = LiveSituations.Of(LiveState.Rung, Hold.Paused);
        LiveDriver silenced = LiveSituations.Of(LiveState.Rung, Hold.Silenced);
        TimeSpan before = LiveTimers.At(paused.Session, paused.Now).WholeSpent;

        paused.Pass(60);
        silenced.Pass(60);

        Assert.Equal(before, LiveTimers.At(paused.Session, paused.Now).WholeSpent);
        Assert.Equal(before + TimeSpan.FromSeconds(60), LiveTimers.At(silenced.Session, silenced.Now).WholeSpent);
    }

    [Fact]
    public void Pause_pressed_again_goes_on()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Rung, Hold.Paused).Act(LiveAction.Pause);

        Assert.Equal((LiveState.Cue, Hold.None), (driver.Session.State, driver.Session.Hold));
        Assert.True(driver.Session.Clocks.IsRunning);
    }

    [Fact]
    public void A_pause_after_a_silence_stops_the_clocks_too()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Rung, Hold.Silenced).Act(LiveAction.Pause);

        Assert.Equal((LiveState.Rung, Hold.Paused, false), (driver.Session.State, driver.Session.Hold, driver.Session.Clocks.IsRunning));
        Assert.Equal(new HoldChanged("paused"), driver.NewestEvents.Single());
    }

    [Fact]
    public void A_paused_talk_goes_on_where_it_was()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Introduce, Hold.Paused).Pass(30).Act(LiveAction.GoOn);

        Assert.Equal((LiveState.Introduce, Hold.None, 1), (driver.Session.State, driver.Session.Hold, driver.Session.StepIndex));
        Assert.Equal(TimeSpan.Zero, driver.Session.Clocks.StepAt(driver.Now));
    }

    [Fact]
    public void A_held_phase_begins_again_from_its_start()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Phase).Pass(5).Act(LiveAction.Silence);
        Assert.Equal(1, driver.Session.PhaseIndex);

        driver.Pass(20).Act(LiveAction.GoOn);

        Assert.Equal((LiveState.Phase, 1), (driver.Session.State, driver.Session.PhaseIndex));
        Assert.Equal(driver.Now + TimeSpan.FromSeconds(2), driver.Session.NextWake);
        Assert.Empty(driver.NewestEvents.OfType<RoundStarted>());
    }

    [Fact]
    public void Trouble_stops_the_music_and_is_told()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Trouble("The piano does not answer."));

        Assert.Equal((LiveState.Rung, Hold.Silenced), (driver.Session.State, driver.Session.Hold));
        Assert.Equal(("The piano does not answer.", true), (driver.Session.Notice!.Text, driver.Session.Notice.IsTrouble));
    }

    [Fact]
    public void Trouble_with_the_log_is_told_and_stops_nothing()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Warning("The disk is full."));

        Assert.Equal(Hold.None, driver.Session.Hold);
        Assert.Equal(("The disk is full.", true), (driver.Session.Notice!.Text, driver.Session.Notice.IsTrouble));
        Assert.Empty(driver.Newest);
    }
}
