using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A proposed plan against the last one: a line for each step, and under it why it is there; then what is left out.</summary>
internal static class PlanDifference
{
    internal static IReadOnlyList<string> Lines(NextPlanInput input, Warmup plan)
    {
        PlanStep[] last = [.. (input.Last?.Steps ?? []).Where(step => input.Exercises.ContainsKey(step.ExerciseId))];
        return
        [
            .. plan.Steps.SelectMany(step => Lines(input, Array.Find(last, old => old.ExerciseId == step.Exercise.Id), step)),
            .. last.Where(old => plan.Steps.All(step => step.Exercise.Id != old.ExerciseId)).Select(old => NextPlanTexts.LeftOut(input.Exercises[old.ExerciseId].Title)),
        ];
    }

    private static IEnumerable<string> Lines(NextPlanInput input, PlanStep? old, WarmupStep step)
    {
        string work = Work(step, input.Choir.Notes);
        string head = old is null ? NextPlanTexts.New(step.Exercise.Title, work)
            : Essence(old) == Essence(step.Plan) ? NextPlanTexts.Same(step.Exercise.Title)
            : NextPlanTexts.Changed(step.Exercise.Title, work, Work(WarmupBuilder.Build(input.Choir, new() { Steps = [old] }, input.Exercises).Steps[0], input.Choir.Notes));
        return step.Plan.Because.Select(NextPlanTexts.Reason).Prepend(head);
    }

    /// <summary>What is led, without what is said about it.</summary>
    private static PlanStep Essence(PlanStep step) => step with { Because = [], Answers = [], Value = null };

    /// <summary>What is done in a step: "9 keys C4 to E4 and back" or "2 rounds".</summary>
    internal static string Work(WarmupStep step, NoteNaming notes)
    {
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        return rungs.Count == 0
            ? NextPlanTexts.Count(step.Rounds, "round")
            : $"{NextPlanTexts.Count(rungs.Count, "key")} {notes.Write(rungs.Min(rung => rung.Tonic))} to {notes.Write(rungs.Max(rung => rung.Tonic))}{(step.Ladder.DifferentKeys < rungs.Count ? NextPlanTexts.AndBack : "")}";
    }
}
