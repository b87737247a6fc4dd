using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>Late: what is offered, what taking it changes, and that a run that was cut off keeps it.</summary>
public sealed class LiveCutTests
{
    // Six keys up and five back; then twice the same purposes upwards, four keys.
    private static readonly Exercise Long = LiveFixtures.Scale with { Id = "long", Title = "Long", Purposes = [Purpose.ScaleMotion] };
    private static readonly Exercise Short = LiveFixtures.Scale with { Id = "short", Title = "Short", Purposes = [Purpose.ScaleMotion] };
    private static readonly TimeSpan FiveKeys = TimeSpan.FromSeconds(5 * 11);

    [Fact]
    public void On_time_nothing_is_offered_and_the_key_says_so()
    {
        LiveDriver driver = Begun().Pass(20);
        Assert.Null(Offer(driver));
        driver.Act(LiveAction.TakeCut);
        Assert.Equal("It is not late: nothing has to be cut.", driver.Session.Notice!.Text);
        Assert.Empty(driver.Newest);
    }

    [Fact]
    public void While_the_talk_runs_over_the_way_back_is_offered_as_soon_as_the_delay_is_worth_it()
    {
        LiveDriver driver = Begun().Pass(10 + 27);
        Assert.Null(Offer(driver));
        Assert.StartsWith("It is late, and no cut fits", LiveMachine.WhyNot(driver.Session, LiveAction.TakeCut, driver.Now));
        Assert.Equal(new StepCut(0, 6, FiveKeys), Offer(driver.Pass(1)));
        Assert.Null(LiveMachine.WhyNot(driver.Session, LiveAction.TakeCut, driver.Now));
    }

    [Fact]
    public void Taking_it_shortens_the_ladder_brings_the_end_nearer_and_is_logged()
    {
        LiveDriver driver = Begun().Pass(10 + 30);
        TimeSpan before = LiveTimers.At(driver.Session, driver.Now).WholeProjected;
        TimeSpan planned = LiveTimers.At(driver.Session, driver.Now).WholePlanned;
        driver.Act(LiveAction.TakeCut);
        Assert.Equal([60, 61, 62, 63, 64, 65], driver.Session.Rungs.Select(rung => rung.Tonic.Midi));
        Assert.Equal(before - FiveKeys, LiveTimers.At(driver.Session, driver.Now).WholeProjected);
        Assert.Equal(planned, LiveTimers.At(driver.Session, driver.Now).WholePlanned);
        Assert.Equal(new CutTaken(0, "long", 6, 55), driver.NewestEvents[^1]);
        Assert.Equal("cut: no way back in Long, saves 0:55", driver.Session.Notice!.Text);
    }

    [Fact]
    public void On_the_way_back_the_key_that_was_cued_is_still_sung()
    {
        LiveDriver driver = Begun().Act(LiveAction.GoOn);
        while (driver.Session.RungIndex < 6 || driver.Session.State != LiveState.Breath)
        {
            driver.RunTo(LiveState.Breath);
        }

        driver.Act(LiveAction.Pause, LiveAction.GoOn, LiveAction.Silence).Pass(60).Act(LiveAction.TakeCut);
        Assert.Equal(8, driver.Session.Rungs.Count);
        driver.Act(LiveAction.GoOn).RunTo(LiveState.Introduce);
        Assert.Equal(1, driver.Session.StepIndex);
    }

    [Fact]
    public void A_step_to_come_is_shortened_or_left_out_and_its_number_stays()
    {
        LiveDriver driver = new LiveDriver(Warmup(Up("short"), Back("long"), Up("short"))).Act(LiveAction.GoOn).Pass(10 + 40).Act(LiveAction.TakeCut);
        Assert.Equal((1, 6), (driver.Session.Shortened.Keys.Single().Key, driver.Session.LadderOf(1).Count));
        driver.Pass(100).Act(LiveAction.TakeCut);
        Assert.Equal([0, 2], driver.Session.Order);
        driver.Act(LiveAction.StepOn);
        Assert.Equal(2, driver.Session.StepIndex);
    }

    [Fact]
    public void What_was_put_in_is_not_offered()
    {
        LiveDriver driver = new LiveDriver(Warmup(Up("short"))).Act(LiveAction.GoOn)
            .Send(new LiveInput.Insert(WarmupBuilder.Alone(LiveFixtures.Choir, Long), "", Now: false)).Pass(100);
        Assert.True(LiveCuts.Delay(driver.Session, driver.Now) > LiveCuts.Noticeable);
        Assert.Null(Offer(driver));
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_with_what_was_cut()
    {
        Warmup warmup = Warmup(Up("short"), Back("long"), Up("short"));
        LiveDriver driver = new LiveDriver(warmup).Act(LiveAction.GoOn).Pass(10 + 40).Act(LiveAction.TakeCut);
        LiveSession resumed = LiveMachine.Resume(warmup, SessionFacts.Fold(driver.Events), driver.Now).Session;
        Assert.Equal(driver.Session.Shortened, resumed.Shortened);
        LiveSession next = LiveMachine.Handle(resumed, new LiveInput.Act(LiveAction.StepOn), driver.Now).Session;
        Assert.Equal(6, next.Rungs.Count);
    }

    private static StepCut? Offer(LiveDriver driver) => LiveCuts.Offer(driver.Session, driver.Now);

    private static LiveDriver Begun() => new LiveDriver(Warmup(Back("long"), Up("short"))).Act(LiveAction.GoOn);

    private static PlanStep Back(string id) => new() { ExerciseId = id, Keys = new() { Shape = LadderShape.UpAndBack } };

    private static PlanStep Up(string id) => new() { ExerciseId = id, Keys = new() { Shape = LadderShape.Up, MostKeys = 4 } };

    private static Warmup Warmup(params PlanStep[] steps) =>
        WarmupBuilder.Build(LiveFixtures.Choir, new() { Steps = steps }, new Dictionary<string, Exercise> { ["long"] = Long, ["short"] = Short });
}
