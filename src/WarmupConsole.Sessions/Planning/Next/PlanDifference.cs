using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A proposed plan against the last one: a line for each step, and under it why it changed.</summary>
internal static class PlanDifference
{
    internal static IReadOnlyList<string> Lines(Plan last, Draft draft) => [.. draft.Steps.SelectMany(step => Lines(last, draft, step))];

    private static IEnumerable<string> Lines(Plan last, Draft draft, DraftStep step)
    {
        PlanStep? old = step.Origin is { } origin ? last.Steps[origin] : null;
        bool isSame = old?.ExerciseId == step.Step.ExerciseId;
        bool isKept = old is not null && isSame && old with { Because = [] } == step.Step with { Because = [] };
        string title = draft.Exercises[step.Step.ExerciseId].Title;
        NoteNaming notes = draft.Choir.Notes;
        string work = Work(draft.Ready(step.Step), notes);
        IEnumerable<string> head = (old, isSame) switch
        {
            _ when isKept => [NextPlanTexts.Kept(title, step.IsSettled ? step.Step.Because[0] : "")],
            ({ }, true) => [NextPlanTexts.Changed(title, work, Work(draft.Ready(old), notes))],
            ({ }, false) => [$"- {draft.Exercises[old.ExerciseId].Title}", NextPlanTexts.New(title, work)],
            _ => [NextPlanTexts.New(title, work)],
        };
        return head.Concat(isKept ? [] : step.Step.Because.Select(NextPlanTexts.Reason));
    }

    /// <summary>What is done in a step: "9 keys C4 to E4" or "2 rounds".</summary>
    private static string Work(WarmupStep step, NoteNaming notes)
    {
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        return rungs.Count == 0
            ? NextPlanTexts.Count(step.Rounds, "round")
            : $"{NextPlanTexts.Count(rungs.Count, "key")} {notes.Write(rungs.Min(rung => rung.Tonic))} to {notes.Write(rungs.Max(rung => rung.Tonic))}";
    }
}
