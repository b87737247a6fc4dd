using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

public class ResumeTests
{
    [Fact]
    public void A_run_cut_off_in_a_rung_comes_back_paused_and_leads_in_to_it()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.Faster);
        LiveOutcome resumed = Resume(driver);

        Assert.Equal((LiveState.Cue, Hold.Paused), (resumed.Session.State, resumed.Session.Hold));
        Assert.Equal((1, 1), (resumed.Session.StepIndex, resumed.Session.RungIndex));
        Assert.Equal(Tempo.FromBeatsPerMinute(63), resumed.Session.Tempo);
        Assert.Equal([new LiveEffect.Record(new RunResumed(1, 1)), new LiveEffect.Record(new HoldChanged("paused"))], resumed.Effects);
        LiveOutcome on = LiveMachine.Handle(resumed.Session, new LiveInput.Act(LiveAction.GoOn), driver.Now);
        Assert.Equal((LiveState.Cue, 1), (on.Session.State, on.Session.RungIndex));
    }

    [Fact]
    public void A_rung_that_was_sung_to_its_end_is_not_sung_again()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Wait);
        LiveSession before = driver.Session;

        LiveSession resumed = Resume(driver).Session;

        Assert.Equal((LiveState.Cue, before.RungIndex + 1), (resumed.State, resumed.RungIndex));
    }

    [Fact]
    public void Time_spent_before_goes_on_counting_once_the_director_goes_on()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        LiveSession resumed = LiveMachine.Resume(LiveFixtures.Whole, SessionFacts.Fold(driver.Events), driver.Now, (TimeSpan.FromMinutes(3), TimeSpan.FromMinutes(1))).Session;

        Assert.Equal(TimeSpan.FromMinutes(3), resumed.Clocks.WholeAt(driver.Now + TimeSpan.FromMinutes(5)));
        LiveSession on = LiveMachine.Handle(resumed, new LiveInput.Act(LiveAction.GoOn), driver.Now).Session;
        Assert.Equal(TimeSpan.FromMinutes(4), on.Clocks.WholeAt(driver.Now + TimeSpan.FromMinutes(1)));
        Assert.Equal(TimeSpan.FromMinutes(2), on.Clocks.StepAt(driver.Now + TimeSpan.FromMinutes(1)));
    }

    [Fact]
    public void Keys_added_beyond_the_plan_come_back_as_they_were_sung()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act([.. Enumerable.Repeat(LiveAction.OneMoreKey, 5)]);
        Rung[] before = [.. driver.Session.Rungs];
        Rung[] after = [.. Resume(driver).Session.Rungs];

        Assert.Equal(66, after.Max(rung => rung.Tonic.Midi));
        Assert.Equal(before.Select(rung => rung.Tonic), after.Select(rung => rung.Tonic));
        Assert.Equal(before.SelectMany(rung => rung.Parts), after.SelectMany(rung => rung.Parts));
    }

    [Fact]
    public void Marks_come_back_flushed_with_their_words_and_numbers()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        driver.Send(new LiveInput.MarkKept("a f", driver.Session.AnchorAt(driver.Now)))
            .Send(new LiveInput.MarkKept("b strained", driver.Session.AnchorAt(driver.Now)))
            .Send(new LiveInput.UndoMark());

        LiveSession resumed = Resume(driver).Session;

        Assert.Equal(driver.Session.Marks.Single() with { IsFlushed = true, Fact = 0, Content = resumed.Marks[0].Content }, resumed.Marks.Single());
        Assert.Equal(driver.Session.Marks[0].Content.PartIds, resumed.Marks[0].Content.PartIds);
        Assert.Equal(3, resumed.NextMarkId);
    }

    [Fact]
    public void The_marks_of_one_line_come_back_as_the_marks_they_were()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        driver.Send(new LiveInput.MarkKept("s f, a very s", driver.Session.AnchorAt(driver.Now)));

        Assert.Equal(["sopranos flat in D♭", "altos very sharp in D♭"], Resume(driver).Session.Marks.Select(mark => mark.Echo));
    }

    [Fact]
    public void A_log_that_ends_before_the_tempo_of_its_step_goes_on_at_the_tempo_of_the_plan()
    {
        SessionFacts facts = SessionFacts.Fold([new StepStarted(0, "scale", [60, 62]), new TimelineChanged(123_000, 0, 0), new StepStarted(1, "scale", [60])]);

        LiveOutcome resumed = LiveMachine.Resume(LiveFixtures.Whole, facts, new Moment(5));

        Tempo planned = LiveFixtures.Whole.Steps[1].Tempo;
        Assert.Equal(planned, resumed.Session.Tempo);
        Assert.Equal(planned.MilliBeatsPerMinute, resumed.Effects.OfType<LiveEffect.Record>().Select(record => record.Event).OfType<TimelineChanged>().Single().MilliBpm);
    }

    [Fact]
    public void A_run_cut_off_before_its_first_step_is_ready_again() =>
        Assert.Equal(LiveState.Ready, Resume(new LiveDriver(LiveFixtures.Whole)).Session.State);

    [Fact]
    public void A_run_that_was_over_stays_over()
    {
        LiveOutcome resumed = Resume(LiveSituations.Of(LiveState.Finished));

        Assert.Equal((LiveState.Finished, false), (resumed.Session.State, resumed.Session.Clocks.IsRunning));
    }

    [Fact]
    public void A_log_that_names_a_rung_beyond_its_ladder_is_taken_to_the_last_one()
    {
        SessionFacts facts = LiveSituations.SecondRung().Session.Facts() with { RungIndex = 99 };

        Assert.Equal(4, LiveMachine.Resume(LiveFixtures.Whole, facts, default).Session.RungIndex);
    }

    private static LiveOutcome Resume(LiveDriver driver) =>
        LiveMachine.Resume(LiveFixtures.Whole, SessionFacts.Fold(driver.Events), driver.Now);
}
