using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What the piano plays, changed while a step is led.</summary>
public class AccompanyTests
{
    [Theory]
    [InlineData(AccompanimentStyle.CueOnly, "cue chords only")]
    [InlineData(AccompanimentStyle.Melody, "the melody")]
    [InlineData(AccompanimentStyle.Broken, "broken chords")]
    [InlineData(AccompanimentStyle.BassAndChord, "bass and chord")]
    [InlineData(AccompanimentStyle.Drone, "a drone")]
    public void The_next_key_has_it_and_the_present_one_sounds_on(AccompanimentStyle style, string words)
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Accompany(style));

        Assert.Equal(new AccompanimentChanged(1, PianoData.Id(style)), driver.NewestEvents.Single());
        Assert.Equal($"piano, from the next key: {words}", driver.Session.Notice!.Text);
        Assert.DoesNotContain(driver.Newest, effect => effect is LiveEffect.Play or LiveEffect.Silence);
        AssertNextKeyHas(driver.RunTo(LiveState.Breath), style);
    }

    [Fact]
    public void What_was_handed_over_stands_and_the_key_after_it_has_it()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Breath).Send(new LiveInput.Accompany(AccompanimentStyle.Drone));
        Assert.Equal("piano, from the key after this one: a drone", driver.Session.Notice!.Text);
        Assert.DoesNotContain(driver.Newest, effect => effect is LiveEffect.Play or LiveEffect.Silence);
        AssertNextKeyHas(driver.RunTo(LiveState.Rung).RunTo(LiveState.Breath), AccompanimentStyle.Drone);
    }

    [Fact]
    public void The_key_that_is_led_in_to_has_it_already()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Cue).Send(new LiveInput.Accompany(AccompanimentStyle.CueOnly));
        int before = driver.Effects.Count;
        driver.RunTo(LiveState.Rung);
        Assert.DoesNotContain(driver.Effects.Skip(before), effect => effect is LiveEffect.Play);
    }

    [Fact]
    public void The_same_again_is_told_and_changes_nothing()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Accompany(AccompanimentStyle.Block));
        Assert.Equal("The piano plays that already: whole chords.", driver.Session.Notice!.Text);
        Assert.Empty(driver.Newest);
    }

    [Fact]
    public void While_it_follows_it_counts_for_when_the_console_leads_again()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Follow).Send(new LiveInput.Accompany(AccompanimentStyle.Melody));
        Assert.Equal("piano, once the console leads again: the melody", driver.Session.Notice!.Text);
        Assert.Equal(AccompanimentStyle.Melody, driver.Act(LiveAction.Follow).Session.Piano.Style);
    }

    [Fact]
    public void A_step_without_anything_to_sing_refuses_it_before_and_in_its_rounds()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Whole).Act(LiveAction.GoOn).Send(new LiveInput.Accompany(AccompanimentStyle.Drone));
        Assert.Equal((LiveState.Introduce, "Nothing is sung in this step: the piano has nothing to play."), (driver.Session.State, driver.Session.Notice!.Text));
        driver.Act(LiveAction.GoOn).Send(new LiveInput.Accompany(AccompanimentStyle.Drone));
        Assert.Equal((LiveState.Phase, "Nothing is sung in this step: the piano has nothing to play."), (driver.Session.State, driver.Session.Notice!.Text));
        Assert.Null(driver.Session.Style);
    }

    [Fact]
    public void A_new_step_begins_as_planned_in_the_session_and_in_its_log()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Accompany(AccompanimentStyle.Drone));
        Assert.Equal(AccompanimentStyle.Drone, SessionFacts.Fold(driver.Events).Style);
        driver.Act(LiveAction.StepOn);
        Assert.Equal((AccompanimentStyle.Block, null), (driver.Session.Piano.Style, SessionFacts.Fold(driver.Events).Style));
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_with_the_same_accompaniment()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Accompany(AccompanimentStyle.BassAndChord));
        Assert.Equal(AccompanimentStyle.BassAndChord, LiveMachine.Resume(LiveFixtures.Whole, SessionFacts.Fold(driver.Events), driver.Now).Session.Piano.Style);
    }

    [Fact]
    public void A_style_that_only_a_later_version_knows_leaves_it_as_planned() =>
        Assert.Null(SessionFacts.Fold([new AccompanimentChanged(0, "drone"), new AccompanimentChanged(0, "harp")]).Style);

    [Theory]
    [InlineData("d", AccompanimentStyle.Drone)]
    [InlineData("BASS", AccompanimentStyle.BassAndChord)]
    [InlineData("b", null)]
    [InlineData("", null)]
    public void Letters_name_a_style_where_only_one_begins_with_them(string letters, AccompanimentStyle? style) =>
        Assert.Equal(style, PianoData.Find(letters));

    /// <summary>At the beginning of a breath the notes of the next key are handed over last.</summary>
    private static void AssertNextKeyHas(LiveDriver driver, AccompanimentStyle style)
    {
        LiveSession session = driver.Session;
        IReadOnlyList<ScoreNote> expected = Accompaniment.For(session.Step!.Exercise, session.NextRung!, PianoPart.Usual with { Style = style });
        LiveEffect.Play[] plays = [.. driver.Newest.OfType<LiveEffect.Play>()];
        ScoreNote[] notes = [.. plays.Where(play => play.Notes[0].Start >= session.StateEnd!.Value).SelectMany(play => play.Notes)];
        Assert.Equal(expected, notes.Select(note => note with { Start = note.Start - session.StateEnd!.Value }));
    }
}
