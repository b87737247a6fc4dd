using WarmupConsole.Music.Ladders;

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
            return [step.IsSettled ? $"= {title}: {step.Step.Because[0]}" : $"= {title}"];
        }

        string work = Work(draft.Ready(step.Step));
        string reasons = string.Join("; ", step.Step.Because);
        return (old, isSame) switch
        {
            ({ }, true) => [NextPlanTexts.Changed(title, work, Work(draft.Ready(old)), reasons)],
            ({ }, false) => [$"- {draft.Exercises[old.ExerciseId].Title}", NextPlanTexts.New(title, work, reasons)],
            _ => [NextPlanTexts.New(title, work, reasons)],
        };
    }

    /// <summary>What is done in a step: "9 keys C4 to E4" or "2 rounds".</summary>
    private static string Work(WarmupStep step)
    {
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        return rungs.Count == 0
            ? NextPlanTexts.Count(step.Rounds, "round")
            : $"{NextPlanTexts.Count(rungs.Count, "key")} {rungs.MinBy(rung => rung.Tonic)!.Tonic} to {rungs.MaxBy(rung => rung.Tonic)!.Tonic}";
    }
}
