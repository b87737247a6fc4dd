namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>A warm-up takes about an eighth of the rehearsal, 10 minutes at least (common practice); five minutes either way pass.</summary>
internal sealed class RehearsalShareRule : IPlanRule
{
    private const int LeastMinutes = 10;
    private const int ToleranceMinutes = 5;

    public string Name => "rehearsal-share";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        (int minutes, int rehearsal) = (warmup.Plan.Minutes, warmup.Choir.RehearsalMinutes);
        int usual = Math.Max(LeastMinutes, (int)Math.Round(rehearsal / 8.0, MidpointRounding.AwayFromZero));
        if (minutes < Math.Max(LeastMinutes, usual - ToleranceMinutes))
        {
            yield return new(PlanSeverity.Hint, Name, null, PlanTexts.ShortShare(minutes, usual, rehearsal), "minutes");
        }

        if (minutes > usual + ToleranceMinutes)
        {
            yield return new(PlanSeverity.Hint, Name, null, PlanTexts.LongShare(minutes, usual, rehearsal), "minutes");
        }
    }
}
