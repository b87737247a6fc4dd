using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

public class LiveTimersTests
{
    // By the one formula: talk 20 s and 24 beats at 60; talk 10 s, lead-in 4 beats and 5 rungs of 9 + 2 beats at 60; talk 10 s and 4 + 3 x 11 beats at 96.
    private const double Breath = 44;
    private const double UpAndBack = 10 + 4 + 55;
    private const double Up = 10 + (37 * 60 / 96.0);

    [Fact]
    public void Before_the_start_all_is_planned_and_nothing_spent()
    {
        LiveDriver driver = new LiveDriver(LiveFixtures.Whole).Pass(100);

        Expect(driver, Breath, 0, Breath, 0, Breath + UpAndBack + Up);
        Assert.Equal(Breath + UpAndBack + Up, LiveTimers.At(driver.Session, driver.Now).WholePlanned.TotalSeconds, 5);
    }

    [Fact]
    public void Talk_within_its_time_projects_the_plan_and_longer_talk_is_late()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Pass(6);
        Expect(driver, UpAndBack, 6, UpAndBack, 6, 6 + (UpAndBack - 6) + Up);

        driver.Pass(9);
        Expect(driver, UpAndBack, 15, UpAndBack + 5, 15, UpAndBack + 5 + Up);
    }

    [Theory]
    [InlineData(1, 4 + 55)]
    [InlineData(3, 4 + 55)]
    [InlineData(10, 4 + 55)]
    [InlineData(14, 4 + 55)]
    [InlineData(30, 4 + 55)]
    public void While_the_keys_run_on_time_the_projection_stands_still(double seconds, double projected)
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Act(LiveAction.GoOn).Pass(seconds);

        Expect(driver, UpAndBack, seconds, projected, seconds, projected + Up);
    }

    [Fact]
    public void In_a_silence_the_lead_in_to_come_is_reckoned_and_the_projection_grows()
    {
        LiveDriver driver = LiveSituations.InMiddleStep().Act(LiveAction.GoOn).Pass(10).Act(LiveAction.Silence).Pass(5);

        Expect(driver, UpAndBack, 15, 15 + 4 + 55, 15, 15 + 4 + 55 + Up);
    }

    [Fact]
    public void A_shorter_ladder_and_a_quicker_tempo_bring_the_end_nearer()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.TurnRound);
        double spent = 4 + 9 + 2;
        Expect(driver, UpAndBack, spent, spent + 22, spent, spent + 22 + Up);

        driver.Act(LiveAction.Faster);
        Expect(driver, UpAndBack, spent, spent + (22 * 60 / 63.0), spent, spent + (22 * 60 / 63.0) + Up);
    }

    [Fact]
    public void In_the_breath_and_while_waiting_the_breath_and_the_keys_behind_it_remain()
    {
        LiveDriver breath = LiveSituations.Of(LiveState.Breath).Pass(1);
        Assert.Equal(1 + (3 * 11), Left(breath), 5);

        LiveDriver wait = LiveSituations.Of(LiveState.Wait).Pass(40);
        Assert.Equal(2 + (3 * 11), Left(wait), 5);

        LiveDriver held = LiveSituations.Of(LiveState.Breath, Hold.Silenced);
        Assert.Equal(4 + (3 * 11), Left(held), 5);
    }

    [Fact]
    public void Phases_and_rounds_to_come_remain()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Phase).Pass(5);

        Assert.Equal(24 - 5, Left(driver), 5);
    }

    [Fact]
    public void At_the_end_nothing_remains_and_time_stands()
    {
        LiveDriver driver = LiveSituations.SecondRung().Act(LiveAction.End).Pass(100);

        Expect(driver, UpAndBack, 15, 15, 15, 15);
    }

    private static double Left(LiveDriver driver)
    {
        LiveTimers timers = LiveTimers.At(driver.Session, driver.Now);
        return (timers.StepProjected - timers.StepSpent).TotalSeconds;
    }

    private static void Expect(LiveDriver driver, params double[] seconds)
    {
        LiveTimers timers = LiveTimers.At(driver.Session, driver.Now);
        TimeSpan[] shown = [timers.StepPlanned, timers.StepSpent, timers.StepProjected, timers.WholeSpent, timers.WholeProjected];
        Assert.Equal(seconds, shown.Select(span => Math.Round(span.TotalSeconds, 5)), (a, b) => Math.Abs(a - b) < 0.0001);
    }
}
