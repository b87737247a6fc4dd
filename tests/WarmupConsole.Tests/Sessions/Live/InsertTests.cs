using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>Exercises put in while a plan of three steps runs, or without any plan.</summary>
public class InsertTests
{
    private static readonly Exercise Siren = LiveFixtures.Scale with { Id = "siren", Title = "Siren" };

    [Fact]
    public void Next_it_stands_behind_the_present_step_and_nothing_stops()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(Insert(now: false));

        Assert.Equal([0, 1, 3, 2], driver.Session.Order);
        Assert.Equal((LiveState.Rung, 1, "put in: Siren"), (driver.Session.State, driver.Session.StepIndex, driver.Session.Notice!.Text));
        Assert.Equal(["StepAdded", "OrderChanged"], driver.NewestEvents.Select(happened => happened.GetType().Name));
        Assert.Equal(3, driver.Act(LiveAction.StepOn).Session.StepIndex);
        Assert.Equal(2, driver.Act(LiveAction.StepOn).Session.StepIndex);
    }

    [Fact]
    public void Now_it_is_introduced_at_once_and_back_leads_to_the_step_that_was_left()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(Insert(now: true));

        Assert.Equal((LiveState.Introduce, "siren"), (driver.Session.State, driver.Session.Step!.Exercise.Id));
        Assert.Contains(new RungEnded(1, 1, Whole: false), driver.NewestEvents);
        Assert.IsType<LiveEffect.Silence>(driver.Newest.First(effect => effect is not LiveEffect.Record));
        driver.Act(LiveAction.StepBack);
        Assert.Equal(1, driver.Session.StepIndex);
        Assert.Equal(SessionFacts.Fold(driver.Events).Order, driver.Session.Facts().Order);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Before_the_start_it_comes_first(bool now)
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Ready).Send(Insert(now));
        if (!now)
        {
            driver.Act(LiveAction.GoOn);
        }

        Assert.Equal((LiveState.Introduce, "siren"), (driver.Session.State, driver.Session.Step!.Exercise.Id));
        Assert.Equal([3, 0, 1, 2], driver.Session.Order);
    }

    [Fact]
    public void A_mark_stays_with_its_step_whatever_is_put_in_before_others()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.PinMoment()).Send(Insert(now: true)).Act(LiveAction.StepBack, LiveAction.StepBack).Send(Insert(now: true));

        Assert.Equal((1, "pinned in D♭"), (driver.Session.Marks[0].Anchor.Step, driver.Session.Marks[0].Echo));
    }

    [Fact]
    public void Without_a_plan_the_exercise_begins_and_afterwards_the_session_stays_open()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Of()).Act(LiveAction.GoOn).Send(Insert(now: false));
        Assert.Equal((LiveState.Introduce, "siren"), (driver.Session.State, driver.Session.Step!.Exercise.Id));

        driver.Act(LiveAction.GoOn, LiveAction.StepOn);
        Assert.Equal((LiveState.Introduce, null), (driver.Session.State, driver.Session.Step));
        Assert.Equivalent(SessionFacts.Fold(driver.Events), driver.Session.Facts());

        driver.Send(Insert(now: false)).Act(LiveAction.StepBack);
        Assert.Equal((0, 2), (driver.Session.StepIndex, driver.Session.Order.Count));
        Assert.Equal(LiveState.Finished, driver.Act(LiveAction.End).Session.State);
    }

    [Fact]
    public void Without_a_plan_the_last_key_leads_back_to_the_open_session()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Of()).Act(LiveAction.GoOn).Send(Insert(now: true)).Act(LiveAction.GoOn, LiveAction.RollOrWait, LiveAction.RollOrWait).RunTo(LiveState.Introduce);

        Assert.Null(driver.Session.Step);
        Assert.Equal("There is no plan to lead: put in an exercise, or type marks; end closes the session.", driver.Act(LiveAction.GoOn).Session.Notice!.Text);
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_in_the_same_order()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(Insert(now: true)).Act(LiveAction.GoOn).RunTo(LiveState.Rung);
        Warmup whole = LiveFixtures.Whole with { Steps = [.. LiveFixtures.Whole.Steps, WarmupBuilder.Alone(LiveFixtures.Choir, Siren)] };
        LiveSession resumed = LiveMachine.Resume(whole, SessionFacts.Fold(driver.Events), driver.Now).Session;

        Assert.Equal([0, 1, 3, 2], resumed.Order);
        Assert.Equal((3, 2), (resumed.StepIndex, resumed.NextStepIndex));
    }

    [Fact]
    public void The_time_to_come_counts_what_was_put_in_and_the_plan_stays_what_it_was()
    {
        LiveDriver driver = LiveSituations.InMiddleStep();
        LiveTimers before = LiveTimers.At(driver.Session, driver.Now);
        LiveTimers after = LiveTimers.At(driver.Send(Insert(now: false)).Session, driver.Now);

        Assert.Equal(before.WholePlanned, after.WholePlanned);
        Assert.Equal(before.WholeProjected + WarmupBuilder.Alone(LiveFixtures.Choir, Siren).Planned, after.WholeProjected);
    }

    private static LiveInput.Insert Insert(bool now) => new(WarmupBuilder.Alone(LiveFixtures.Choir, Siren), "format: 1\n", now);
}
