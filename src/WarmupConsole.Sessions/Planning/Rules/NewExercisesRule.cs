using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>At most one exercise of a plan is new to the choir (common practice). Before a few plans are there, nothing is known to be new.</summary>
internal sealed class NewExercisesRule(IReadOnlyList<Plan> earlier) : IPlanRule
{
    private const int FewestPlans = 4;

    public string Name => "new-exercises";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        HashSet<string> known = [.. earlier.SelectMany(plan => plan.Steps).Select(step => step.ExerciseId)];
        (int Index, Exercise Exercise)[] unknown =
        [
            .. warmup.Steps.Select((step, index) => (index, step.Exercise)).DistinctBy(step => step.Exercise.Id).Where(step => !known.Contains(step.Exercise.Id)),
        ];
        if (earlier.Count >= FewestPlans && unknown.Length > 1)
        {
            yield return new(PlanSeverity.Hint, Name, unknown[1].Index, PlanTexts.ManyNew([.. unknown.Select(step => step.Exercise.Title)]));
        }
    }
}
