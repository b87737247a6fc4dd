using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>Jumping to a key, only some parts, another octave. The fixture climbs C, D flat, D and comes back.</summary>
public class VoicesTests
{
    [Fact]
    public void A_jump_ahead_leaves_out_what_lies_between()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Act(LiveAction.GoOn).RunTo(LiveState.Rung).Send(Jump("D4"));

        Assert.Equal("C4 D4 Db4 C4", Keys(driver));
        Assert.Equal((LiveState.Cue, 1), (driver.Session.State, driver.Session.RungIndex));
        Assert.Contains(new RungEnded(1, 0, Whole: false), driver.NewestEvents);
        Assert.Contains(new LeadInStarted(1, 1), driver.NewestEvents);
    }

    [Fact]
    public void A_jump_to_a_key_beyond_the_ladder_goes_on_from_there_as_the_plan_shapes_it()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(Jump("Eb4"));

        Assert.Equal("C4 Db4 Eb4 E4 F4 E4 Eb4", Keys(driver));
        Assert.Equal((LiveState.Cue, 2), (driver.Session.State, driver.Session.RungIndex));
    }

    [Fact]
    public void Before_the_first_key_a_jump_only_sets_where_the_ladder_begins()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Send(Jump("D4"));

        Assert.Equal((LiveState.Introduce, "D4 Db4 C4"), (driver.Session.State, Keys(driver)));
        Assert.DoesNotContain(driver.Newest, effect => effect is LiveEffect.Play);
    }

    [Fact]
    public void A_key_that_nobody_can_sing_is_refused_and_nothing_stops()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(Jump("C7"));

        Assert.Equal("No part can sing C in this exercise.", driver.Session.Notice!.Text);
        Assert.Equal(LiveState.Rung, driver.Session.State);
        Assert.Empty(driver.Newest);
    }

    [Fact]
    public void The_actions_that_name_something_say_so_when_nothing_is_named() =>
        Assert.All(
            [LiveAction.JumpToKey, LiveAction.ChooseParts, LiveAction.SwapOctave, LiveAction.Accompany],
            action => Assert.Equal("It needs a name: a key, parts, an exercise, or what the piano plays.", LiveSituations.SecondRung().Act(action).Session.Notice!.Text));

    [Fact]
    public void Some_parts_alone_go_as_far_as_they_go_from_the_next_key_on()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Sing(["soprano", "tenor"]));

        Assert.Equal("C4 Db4 D4 Eb4 E4 Eb4 D4", Keys(driver));
        Assert.Equal(4, driver.Session.Rung!.Parts.Count(part => part.Sings));
        Assert.All(driver.Session.Rungs.Skip(2), rung => Assert.Equal(["soprano", "tenor"], rung.Parts.Where(part => part.Sings).Select(part => part.Part.Id)));
        Assert.Equal(LiveState.Rung, driver.Session.State);
        Assert.Equal("now sing: sopranos and tenors", driver.Session.Notice!.Text);

        driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung);
        Assert.Equal(["soprano", "tenor"], driver.NewestEvents.OfType<RungStarted>().Single().Sing);
    }

    [Fact]
    public void On_the_way_back_the_parts_change_and_the_keys_stay()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.TurnRound).Send(new LiveInput.Sing(["alto"]));

        Assert.Equal("C4 Db4 C4", Keys(driver));
        Assert.Equal(["alto"], driver.Session.Rungs[2].Parts.Where(part => part.Sings).Select(part => part.Part.Id));
    }

    [Fact]
    public void In_a_hold_the_parts_chosen_sing_the_very_key_that_is_led_in_to()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.Silence).Send(new LiveInput.Sing(["bass"])).Act(LiveAction.GoOn);

        Assert.Equal(("Db4", 1), (driver.Session.Rung!.Tonic.ToAscii(), driver.Session.Rung.Parts.Count(part => part.Sings)));
    }

    [Fact]
    public void Everyone_sings_again_and_a_new_step_begins_as_planned()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Send(new LiveInput.Sing(["alto"])).Send(new LiveInput.Sing([]));
        Assert.Equal("now sing: everyone", driver.Session.Notice!.Text);
        Assert.All(driver.Session.Rungs, rung => Assert.All(rung.Parts, part => Assert.True(part.Sings)));

        driver.Send(new LiveInput.Sing(["alto"])).Act(LiveAction.StepOn);
        Assert.Equal(Voicing.AsPlanned, driver.Session.Voicing);
        Assert.Equal(Voicing.AsPlanned, SessionFacts.Fold(driver.Events).Voicing);
    }

    [Fact]
    public void Where_no_key_is_left_for_the_parts_nothing_changes()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Send(new LiveInput.Sing(["nobody"]));

        Assert.StartsWith("No key that is left fits nobody", driver.Session.Notice!.Text, StringComparison.Ordinal);
        Assert.Empty(driver.NewestEvents);
    }

    [Fact]
    public void A_part_takes_the_octave_that_it_can_sing_and_comes_back()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.SwapOctave("soprano"));
        Assert.Equal(new OctaveChanged(1, "soprano", 1), driver.NewestEvents.Single());
        Assert.Equal("an octave higher: sopranos", driver.Session.Notice!.Text);
        Assert.Equal((true, 1, 0), (driver.Session.Rungs[^1].Parts[0].Sings, driver.Session.Rungs[^1].Parts[0].OctaveShift, driver.Session.Rung!.Parts[0].OctaveShift));
        Assert.False(driver.Session.Rungs[3].Parts[0].Sings);
        Assert.Equal(72, driver.Session.Rungs[^1].Parts[0].Span.Low.Midi);

        driver.Send(new LiveInput.SwapOctave("soprano"));
        Assert.Equal("in their own octave: sopranos", driver.Session.Notice!.Text);
        Assert.Equal(0, driver.Session.Rungs[^1].Parts[0].OctaveShift);
    }

    [Fact]
    public void An_octave_in_which_a_part_can_sing_nothing_is_refused()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.SwapOctave("bass"));

        Assert.Equal("In no key that is left can basses sing an octave lower or higher.", driver.Session.Notice!.Text);
        Assert.Empty(driver.NewestEvents);
    }

    [Fact]
    public void One_more_key_is_sung_by_the_parts_chosen()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.Sing(["soprano"])).Act(LiveAction.OneMoreKey);

        Assert.All(driver.Session.Rungs.Skip(2), rung => Assert.Equal(["soprano"], rung.Parts.Where(part => part.Sings).Select(part => part.Part.Id)));
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_with_the_same_parts_octaves_keys_and_breath()
    {
        LiveDriver driver = LiveSituations.SecondRung()
            .Send(new LiveInput.Sing(["soprano", "tenor"])).Send(new LiveInput.SwapOctave("soprano")).Act(LiveAction.LongerBreath).RunTo(LiveState.Breath).RunTo(LiveState.Rung);
        LiveSession resumed = LiveMachine.Resume(LiveFixtures.Whole, SessionFacts.Fold(driver.Events), driver.Now).Session;

        Assert.Equal((driver.Session.Voicing, 3, driver.Session.RungIndex), (resumed.Voicing, resumed.BreathBeats, resumed.RungIndex));
        Assert.Equal(driver.Session.Rung!.Parts, resumed.Rung!.Parts);
        Assert.Equal(driver.Session.Rungs.Select(rung => rung.Tonic), resumed.Rungs.Select(rung => rung.Tonic));
    }

    [Fact]
    public void Equal_voicings_are_equal_whatever_lists_hold_them() =>
        Assert.Equal(Voicing.AsPlanned, new Voicing(["a"], new Dictionary<string, int>()).With("b", 1).With("b", 0) with { Only = [] });

    private static LiveInput.JumpTo Jump(string key) => new(Pitch.Parse(key));

    private static string Keys(LiveDriver driver) => string.Join(' ', driver.Session.Rungs.Select(rung => rung.Tonic.ToAscii()));
}
