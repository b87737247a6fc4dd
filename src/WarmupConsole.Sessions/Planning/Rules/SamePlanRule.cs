namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>The order of stages is a habit, the exercises change: a plan is neither last week's nor for the most part that of the last three.</summary>
internal sealed class SamePlanRule(IReadOnlyList<Plan> earlier) : IPlanRule
{
    private const int Weeks = 3;
    private const int FewestSteps = 4;

    public string Name => "same-plan";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        string[] now = [.. warmup.Steps.Select(step => step.Exercise.Id)];
        HashSet<string>[] last = [.. earlier.Where(plan => plan.Steps.Count > 0).TakeLast(Weeks).Select(plan => plan.Steps.Select(step => step.ExerciseId).ToHashSet())];
        if (now.Length < FewestSteps || last.Length == 0)
        {
            yield break;
        }

        if (now.All(last[^1].Contains))
        {
            yield return new(PlanSeverity.Hint, Name, null, PlanTexts.SameAsLast, "steps");
        }
        else if (last.Length == Weeks && now.Count(id => last.All(plan => plan.Contains(id))) is var kept && 5 * kept >= 4 * now.Length)
        {
            yield return new(PlanSeverity.Hint, Name, null, PlanTexts.SameForWeeks(kept, now.Length), "steps");
        }
    }
}
