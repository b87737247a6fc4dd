using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>Drivers brought to a state, each in the middle of a warm-up: a step before and one behind, a key before and one behind.</summary>
internal static class LiveSituations
{
    public static LiveDriver Of(LiveState state, Hold hold = Hold.None)
    {
        LiveDriver driver = At(state);
        return hold switch
        {
            Hold.Paused => driver.Act(LiveAction.Pause),
            Hold.Silenced => driver.Act(LiveAction.Silence),
            _ => driver,
        };
    }

    /// <summary>In the second rung of the middle step, in its first beat.</summary>
    public static LiveDriver SecondRung() => InMiddleStep().Act(LiveAction.GoOn).RunTo(LiveState.Breath).RunTo(LiveState.Rung);

    public static LiveDriver InMiddleStep() => new LiveDriver(LiveFixtures.Whole).Act(LiveAction.GoOn, LiveAction.StepOn);

    private static LiveDriver At(LiveState state) => state switch
    {
        LiveState.Ready => new(LiveFixtures.Whole),
        LiveState.Introduce => InMiddleStep(),
        LiveState.Cue => SecondRung().Act(LiveAction.Repeat),
        LiveState.CountIn => SecondRung().Act(LiveAction.Repeat).RunTo(state),
        LiveState.Rung => SecondRung(),
        LiveState.Breath => SecondRung().RunTo(state),
        LiveState.Wait => SecondRung().Act(LiveAction.RollOrWait).RunTo(state),
        LiveState.Follow => SecondRung().Act(LiveAction.Follow),
        LiveState.Phase => new LiveDriver(LiveFixtures.Of(
            LiveFixtures.Step(LiveFixtures.Scale),
            LiveFixtures.Step(LiveFixtures.Breath),
            LiveFixtures.Step(LiveFixtures.Scale))).Act(LiveAction.GoOn, LiveAction.StepOn, LiveAction.GoOn),
        _ => SecondRung().Act(LiveAction.End),
    };
}
