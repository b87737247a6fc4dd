using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Mends what the check calls an error in the last plan: moves a step, holds a ladder within comfort, or adds what is missing.</summary>
internal static class Mending
{
    /// <summary>Keys up to the turning point of a ladder that is added.</summary>
    private const int Keys = 4;

    private static readonly int UsualTolerance = new PlanStep { ExerciseId = "" }.Keys.ToleranceSemitones;

    private static readonly Stage[] Missing = [Stage.Breathing, Stage.Humming, Stage.LipTrill, Stage.Sung];

    internal static Draft Mend(Draft draft, List<string> unmet)
    {
        while (draft.Errors() is > 0 and int errors)
        {
            if (Tries(draft).FirstOrDefault(tried => tried.Errors() < errors) is not { } mended)
            {
                unmet.AddRange(PlanCheck.Check(draft.Ready()).Where(remark => remark.Severity == PlanSeverity.Error).Select(remark => NextPlanTexts.NotMended(remark.Sentence)));
                return draft;
            }

            draft = mended;
        }

        return draft;
    }

    private static IEnumerable<Draft> Tries(Draft draft) => Moved(draft).Concat(Held(draft)).Concat(Added(draft));

    /// <summary>Steps that stand behind a later stage, put in their usual place.</summary>
    private static IEnumerable<Draft> Moved(Draft draft) =>
        from index in Enumerable.Range(0, draft.Steps.Count)
        let stage = draft.ExerciseOf(index).Stage
        where Enumerable.Range(0, index).Any(before => draft.ExerciseOf(before).Stage > stage)
        select draft.Without(index).InsertFirst(draft.Steps[index].OnlyBecause(NextPlanTexts.Moved(stage)) with { IsSettled = true });

    private static IEnumerable<Draft> Held(Draft draft) =>
        from index in Enumerable.Range(0, draft.Steps.Count)
        let step = draft.Steps[index]
        let keys = step.Step.Keys
        where keys.ReachPercent > 0 || keys.ToleranceSemitones > UsualTolerance
        select draft.With(index, (step with
        {
            Step = step.Step with { Keys = keys with { ReachPercent = 0, ToleranceSemitones = Math.Min(keys.ToleranceSemitones, UsualTolerance) } },
        }).Because(NextPlanTexts.Held) with
        { IsSettled = true });

    /// <summary>Exercises that the choir knows before others, simple ones before others.</summary>
    private static IEnumerable<Draft> Added(Draft draft) =>
        from stage in Missing
        from exercise in draft.Exercises.Values
            .Where(exercise => exercise.Stage == stage && !draft.Uses(exercise.Id) && !Together.IsNeededFor(exercise))
            .OrderByDescending(exercise => draft.Input.IsKnown(exercise.Id))
            .ThenByDescending(exercise => exercise.Purposes.Contains(Purpose.Simple))
            .ThenBy(exercise => exercise.Id, StringComparer.Ordinal)
        let step = new PlanStep { ExerciseId = exercise.Id, Keys = new() { MostKeys = Keys } }
        select draft.InsertFirst(new DraftStep(step, null, []) { IsSettled = true }.OnlyBecause(NextPlanTexts.Added(stage)));
}
