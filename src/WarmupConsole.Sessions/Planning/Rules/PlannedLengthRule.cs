namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>The steps fill the minutes of the plan: at most a tenth more, at most a quarter less.</summary>
internal sealed class PlannedLengthRule : IPlanRule
{
    public string Name => "planned-length";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        TimeSpan minutes = TimeSpan.FromMinutes(warmup.Plan.Minutes);
        if (warmup.Planned > minutes * 1.10)
        {
            yield return new(PlanSeverity.Warning, Name, null, PlanTexts.TooLong(warmup.Planned, warmup.Plan.Minutes), "minutes");
        }

        if (warmup.Planned < minutes * 0.75)
        {
            yield return new(PlanSeverity.Warning, Name, null, PlanTexts.TooShort(warmup.Planned, warmup.Plan.Minutes), "minutes");
        }
    }
}
