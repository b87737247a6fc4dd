namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A proposed plan against the last one, one line a step.</summary>
internal static class PlanDifference
{
    internal static IReadOnlyList<string> Lines(Plan last, Draft draft) => [.. draft.Steps.SelectMany(step => Lines(last, draft, step))];

    private static IEnumerable<string> Lines(Plan last, Draft draft, DraftStep step)
    {
        PlanStep? old = step.Origin is { } origin ? last.Steps[origin] : null;
        bool isSame = old?.ExerciseId == step.Step.ExerciseId;
        string title = draft.Exercises[step.Step.ExerciseId].Title;
        if (old is not null && isSame && old with { Because = [] } == step.Step with { Because = [] })
        {
            return [$"= {title}"];
        }

        string line = $"{title}: {string.Join("; ", step.Step.Because)}";
        return isSame ? [$"~ {line}"] : old is null ? [$"+ {line}"] : [$"- {draft.Exercises[old.ExerciseId].Title}", $"+ {line}"];
    }
}
