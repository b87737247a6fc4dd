using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What is refused at the ends of plan, ladder and metronome.</summary>
public class RefusalTests
{
    [Fact]
    public void There_is_no_step_before_the_first() => Refused(
        new LiveDriver(LiveFixtures.Whole).Act(LiveAction.GoOn),
        LiveAction.StepBack,
        "This is the first step.");

    [Fact]
    public void There_is_no_step_after_the_last() => Refused(
        LiveSituations.InMiddleStep().Act(LiveAction.StepOn),
        LiveAction.StepOn,
        "This is the last step; end closes the warm-up.");

    [Fact]
    public void The_first_key_has_nothing_behind_it_to_turn_back_to() => Refused(
        LiveSituations.InMiddleStep().Act(LiveAction.GoOn),
        LiveAction.TurnRound,
        "There is no key behind this one to turn back to.");

    [Theory]
    [InlineData(LiveAction.Faster, 300, "This is the quickest tempo, of 20 to 300 bpm.")]
    [InlineData(LiveAction.Slower, 20, "This is the slowest tempo, of 20 to 300 bpm.")]
    public void The_tempo_stays_between_20_and_300(LiveAction action, int bpm, string reason) => Refused(
        new LiveDriver(LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.Scale) with { Tempo = Tempo.FromBeatsPerMinute(bpm) })).Act(LiveAction.GoOn),
        action,
        reason);

    [Theory]
    [InlineData(LiveAction.GoOn)]
    [InlineData(LiveAction.Faster)]
    [InlineData(LiveAction.StepOn)]
    public void Without_a_plan_there_is_nothing_to_lead(LiveAction action) => Refused(
        new LiveDriver(LiveFixtures.Of()).Act(LiveAction.GoOn),
        action,
        "There is no plan to lead: put in an exercise, or type marks; end closes the session.");

    private static void Refused(LiveDriver driver, LiveAction action, string reason)
    {
        Assert.Equal(reason, LiveMachine.WhyNot(driver.Session, action, driver.Now));
        driver.Act(action);
        Assert.Equal(reason, driver.Session.Notice?.Text);
        Assert.Empty(driver.Newest);
    }
}
