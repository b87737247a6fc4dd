namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// Carries the last plan on: same order of stages and same minutes, its errors mended, what was marked or asked for approached from below and
/// from above, and two other exercises exchanged for variety. Every reason is of this week. The same input gives the same plan, always.
/// </summary>
public static class NextPlan
{
    /// <summary>Makes the proposal; it has no errors (see <see cref="PlanCheck"/>) but those that nothing mends, which are told.</summary>
    /// <exception cref="ArgumentException">The last plan names an exercise that is not among the exercises.</exception>
    public static NextPlanResult From(NextPlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Last.Steps.FirstOrDefault(step => !input.Exercises.ContainsKey(step.ExerciseId)) is { } unknown)
        {
            throw new ArgumentException(NextPlanTexts.UnknownExercise(unknown.ExerciseId), nameof(input));
        }

        List<string> unmet = [];
        Draft draft = Mending.Mend(Draft.Of(input), unmet);
        draft = Answers.Give(draft, Need.AllIn(input), unmet);
        draft = Variety.Bring(draft, input, unmet);
        draft = Minutes.Keep(draft, unmet);
        return new(Carrying.WithoutIdleRules(draft), PlanDifference.Lines(input.Last, draft), [.. unmet, .. WishedFor.NotServed(input, draft.Ready())]);
    }
}
