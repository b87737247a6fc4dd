namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// Carries the last plan on: same order of stages and same minutes, what was marked or asked for is approached from below and from above, and
/// two other exercises are exchanged for variety. The same input gives the same plan, always.
/// </summary>
public static class NextPlan
{
    /// <summary>Makes the proposal; it has no more errors (see <see cref="PlanCheck"/>) than the last plan had.</summary>
    /// <exception cref="ArgumentException">The last plan names an exercise that is not among the exercises.</exception>
    public static NextPlanResult From(NextPlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Last.Steps.FirstOrDefault(step => !input.Exercises.ContainsKey(step.ExerciseId)) is { } unknown)
        {
            throw new ArgumentException(NextPlanTexts.UnknownExercise(unknown.ExerciseId), nameof(input));
        }

        List<string> unmet = [];
        Draft draft = Answers.Give(Draft.Of(input), Need.AllIn(input), unmet);
        draft = Variety.Bring(draft, input, unmet);
        draft = Minutes.Keep(draft, unmet);
        return new(draft.Finish(), PlanDifference.Lines(input.Last, draft), [.. unmet, .. WishedFor.NotServed(input, draft.Ready())]);
    }
}
