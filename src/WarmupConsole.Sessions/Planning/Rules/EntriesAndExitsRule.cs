namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Parts enter and leave a ladder seldom: each time must be announced one rung ahead.</summary>
internal sealed class EntriesAndExitsRule : IPlanRule
{
    /// <summary>Two parts that leave on the way up, at different keys, and come back on the way down.</summary>
    private const int Most = 4;

    public string Name => "entries-and-exits";

    public IEnumerable<PlanRemark> Check(Warmup warmup) =>
        from step in warmup.Steps.Index()
        let announcements = step.Item.Ladder.Announcements
        where announcements.Count > Most
        select new PlanRemark(PlanSeverity.Hint, Name, step.Index, PlanTexts.ManyAnnouncements(step.Index, step.Item.Exercise, announcements), "keys");
}
