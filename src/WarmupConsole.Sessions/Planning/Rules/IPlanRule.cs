namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>One thing that is checked in a plan.</summary>
internal interface IPlanRule
{
    string Name { get; }

    /// <summary>The plan has at least one step.</summary>
    IEnumerable<PlanRemark> Check(Warmup warmup);
}
