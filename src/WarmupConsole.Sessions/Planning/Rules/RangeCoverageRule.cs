namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Every part sings more than half of its comfortable range; what is never sung is not warm.</summary>
internal sealed class RangeCoverageRule : IPlanRule
{
    public string Name => "range-coverage";

    public IEnumerable<PlanRemark> Check(Warmup warmup) => warmup.Steps.Any(step => step.Ladder.Rungs.Count > 0)
        ? from part in PartCoverage.Of(warmup)
          where 2 * part.ComfortableSemitones <= part.Part.Range.Comfortable.Semitones + 1
          select new PlanRemark(PlanSeverity.Hint, Name, null, PlanTexts.LittleOfRange(part, warmup.Choir.Notes), "steps")
        : [];
}
