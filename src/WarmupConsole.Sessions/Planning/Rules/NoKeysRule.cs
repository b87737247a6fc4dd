namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Every exercise with a pattern has a key to be sung in.</summary>
internal sealed class NoKeysRule : IPlanRule
{
    public string Name => "no-keys";

    public IEnumerable<PlanRemark> Check(Warmup warmup) =>
        from step in warmup.Steps.Index()
        where step.Item.Exercise.IsSung && step.Item.Ladder.Rungs.Count == 0
        select new PlanRemark(PlanSeverity.Warning, Name, step.Index, PlanTexts.NoKeys(step.Index, step.Item.Exercise, step.Item.Ladder.Reasons), "keys");
}
