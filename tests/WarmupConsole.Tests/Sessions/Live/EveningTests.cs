using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What is told before the start, and what is marked behind the end.</summary>
public class EveningTests
{
    private static readonly Warmup Wide = WarmupBuilder.Build(
        LiveFixtures.WithExtremes,
        new()
        {
            Steps =
            [
                LiveFixtures.Step(LiveFixtures.Scale) with { Keys = new() { ReachPercent = 100 } },
                LiveFixtures.Step(LiveFixtures.Scale) with { Keys = new() { ReachPercent = 100, Limit = "bass" } },
            ],
        },
        new Exercise[] { LiveFixtures.Scale }.ToDictionary(exercise => exercise.Id));

    [Fact]
    public void Tonight_narrows_the_ladders_of_all_steps_and_is_logged()
    {
        LiveDriver driver = new(Wide);
        int keys = driver.Session.Rungs.Count;

        driver.Send(Told("colds"));

        Assert.True(driver.Session.Rungs.Count < keys);
        Assert.Equal(driver.Session.Warmup.Steps[0].Ladder.Rungs, driver.Session.Rungs);
        TonightTold logged = Assert.IsType<TonightTold>(Assert.Single(driver.NewestEvents));
        Assert.Equal(("bass", -1, true, false, "usual", "colds"), (logged.Parts[3], logged.Heads[3], logged.Colds[3], logged.Tired[3], logged.Energy, logged.Raw));
        Assert.StartsWith("tonight: everyone: no further", driver.Session.Notice!.Text, StringComparison.Ordinal);
        Assert.Equal(keys, driver.Send(Told("")).Session.Rungs.Count);
    }

    [Fact]
    public void A_part_that_did_not_come_stops_no_ladder_and_a_step_for_it_alone_is_passed_over()
    {
        LiveDriver driver = new LiveDriver(Wide).Send(Told("b 0"));

        Assert.DoesNotContain(driver.Session.Rungs[0].Parts, part => part.Part.Id == "bass");
        Assert.Empty(driver.Session.Warmup.Steps[1].Ladder.Rungs);
    }

    [Fact]
    public void Once_a_step_was_introduced_it_is_refused()
    {
        LiveDriver driver = new LiveDriver(Wide).Act(LiveAction.GoOn).Send(Told("b colds"));

        Assert.Empty(driver.Newest);
        Assert.Equal("Tonight is told before the start; from here on choose who sings.", driver.Session.Notice!.Text);
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_with_the_same_evening()
    {
        LiveDriver driver = new LiveDriver(Wide).Send(Told("b colds, tired")).Act(LiveAction.GoOn, LiveAction.GoOn).RunTo(LiveState.Rung);
        SessionFacts facts = SessionFacts.Fold(driver.Events);
        LiveSession resumed = LiveMachine.Resume(WarmupBuilder.For(facts.Tonight, Wide), facts, driver.Now).Session;

        Assert.Equivalent(facts, driver.Session.Facts());
        Assert.Equal(driver.Session.Warmup.Tonight, resumed.Warmup.Tonight);
        Assert.Equal(driver.Session.Rungs.Select(rung => rung.Tonic), resumed.Rungs.Select(rung => rung.Tonic));
        Assert.Equal(driver.Session.Rungs.Select(rung => rung.Parts.Count(part => part.Sings)), resumed.Rungs.Select(rung => rung.Parts.Count(part => part.Sings)));
    }

    [Fact]
    public void In_the_rehearsal_the_piece_holds_until_another_is_named()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Finished)
            .Send(new LiveInput.RehearsalKept("Harbour hymn 12-15 a flat at B4"))
            .Send(new LiveInput.RehearsalKept("18: t late"))
            .Send(new LiveInput.RehearsalKept("doors"));

        Assert.Equal(["Harbour hymn, bars 12-15: altos flat on B4", "Harbour hymn, bar 18: tenors late", "Harbour hymn: doors"], driver.Session.RehearsalMarks.Select(mark => mark.Echo));
        RehearsalMarked first = driver.Events.OfType<RehearsalMarked>().First();
        Assert.Equal(("Harbour hymn", "12-15", "alto", "flat", 71), (first.Piece, first.Bars, first.Parts[0], first.Kind, first.Pitch));
    }

    [Fact]
    public void While_the_warm_up_runs_marks_of_the_rehearsal_are_refused() =>
        Assert.Empty(LiveSituations.SecondRung().Send(new LiveInput.RehearsalKept("Hymn 3 a flat")).Session.RehearsalMarks);

    private static LiveInput.TellTonight Told(string typed) => new(TonightText.Read(typed, LiveFixtures.Choir)!, typed);
}
