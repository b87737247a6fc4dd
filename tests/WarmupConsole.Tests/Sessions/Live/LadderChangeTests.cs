using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class LadderChangeTests
{
    [Fact]
    public void Turned_round_it_goes_back_after_this_key_without_a_pause_in_the_sound()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.TurnRound);

        Assert.Equal([60, 61, 60], Keys(driver));
        Assert.Equal("turned round", driver.NewestEvents.OfType<LadderChanged>().Single().Why);
        Assert.Empty(driver.Newest.OfType<LiveEffect.Silence>());
        Assert.Equal(60, driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung).Session.Rung!.Tonic.Midi);
    }

    [Fact]
    public void A_key_that_was_already_cued_stands_and_it_turns_behind_it()
    {
        LiveDriver driver = LiveSituations.SecondRung().Pass(8.5).Act(LiveAction.TurnRound);
        Assert.True(driver.Session.NextKeyCued);

        Assert.Equal([60, 61, 62, 61, 60], Keys(driver));
        Assert.Equal(62, driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung).Session.Rung!.Tonic.Midi);
    }

    [Fact]
    public void One_more_key_moves_the_turning_point_on()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.OneMoreKey);

        Assert.Equal([60, 61, 62, 63, 62, 61, 60], Keys(driver));
        Assert.Equal("one more key", driver.NewestEvents.OfType<LadderChanged>().Single().Why);
    }

    [Fact]
    public void A_key_beyond_what_a_part_can_sing_is_warned_of_first_and_obeyed_at_the_second_press()
    {
        // The bass, an octave lower, ends at C4: the scale on F reaches it, the scale on G flat does not.
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.OneMoreKey, LiveAction.OneMoreKey, LiveAction.OneMoreKey);
        Assert.Equal(65, Keys(driver).Max());

        driver.Act(LiveAction.OneMoreKey);
        Assert.Equal(65, Keys(driver).Max());
        Assert.StartsWith("Enter again sings it all the same. In G♭ ", driver.Session.Notice!.Text, StringComparison.Ordinal);
        Assert.Empty(driver.Newest);

        driver.Act(LiveAction.OneMoreKey);
        Assert.Equal(66, Keys(driver).Max());
        Assert.Equal("one more key: G♭", driver.Session.Notice!.Text);
    }

    [Fact]
    public void A_warning_is_forgotten_at_the_next_rung()
    {
        LiveDriver driver = LiveSituations.SecondRung()
            .Act(LiveAction.OneMoreKey, LiveAction.OneMoreKey, LiveAction.OneMoreKey, LiveAction.OneMoreKey)
            .RunTo(LiveState.Breath)
            .RunTo(LiveState.Rung)
            .Act(LiveAction.OneMoreKey);

        Assert.Equal(65, Keys(driver).Max());
    }

    [Fact]
    public void Switched_to_waiting_it_waits_after_this_key_unless_the_next_was_cued()
    {
        Assert.Equal(LiveState.Wait, LiveSituations.SecondRung().Act(LiveAction.RollOrWait).Pass(9).Session.State);
        LiveDriver cued = LiveSituations.SecondRung().Pass(8.5).Act(LiveAction.RollOrWait).Pass(0.5);
        Assert.Equal((LiveState.Breath, false), (cued.Session.State, cued.Session.Rolling));
    }

    [Fact]
    public void Switched_to_rolling_while_it_waits_it_goes_on()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Wait).Act(LiveAction.RollOrWait);

        Assert.Equal((LiveState.Breath, true), (driver.Session.State, driver.Session.Rolling));
    }

    [Fact]
    public void Switched_to_rolling_in_the_last_beat_the_cue_comes_with_the_breath()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.RollOrWait).Pass(8.5).Act(LiveAction.RollOrWait).Pass(0.5);

        Assert.Equal(LiveState.Breath, driver.Session.State);
        Assert.Equal([driver.Session.StateStart, driver.Session.StateEnd!.Value], driver.Newest.OfType<LiveEffect.Play>().Select(play => play.Notes.Min(note => note.Start)));
        Assert.Equal(Beats.FromBeats(2), driver.Session.StateEnd - driver.Session.StateStart);
    }

    private static IEnumerable<int> Keys(LiveDriver driver) => driver.Session.Rungs.Select(rung => rung.Tonic.Midi);
}
