using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>A warm-up serves most of the voice's functions: of the seven families of purposes, two may be left for another week.</summary>
internal sealed class PurposeCoverageRule : IPlanRule
{
    private const int MostLeftOut = 2;

    /// <summary>A short warm-up cannot serve them all.</summary>
    private const int FromMinutes = 12;

    private static readonly string[] Families = [.. PurposeData.Ids.Select(Family).Distinct()];

    public string Name => "purpose-coverage";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        HashSet<string> served = [.. warmup.Steps.SelectMany(step => step.Exercise.Purposes).Select(purpose => Family(PurposeData.Id(purpose)))];
        string[] leftOut = [.. Families.Where(family => !served.Contains(family))];
        if (leftOut.Length > MostLeftOut && warmup.Plan.Minutes >= FromMinutes)
        {
            yield return new(PlanSeverity.Hint, Name, null, PlanTexts.PurposesLeftOut(leftOut), "steps");
        }
    }

    /// <summary>"tuning" of "tuning.scale".</summary>
    private static string Family(string id) => id[..id.IndexOf('.', StringComparison.Ordinal)];
}
