using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Gives every need a step whose ladder comes to it from both sides.</summary>
internal static class Answers
{
    /// <summary>Kinds that ask for relief: they are answered on half-closed sounds first, which are easier on the voice.</summary>
    private static readonly string[] Tiring = ["strained", "pressed", "tired"];

    private static readonly Stage[] ReliefFirst = [Stage.Humming, Stage.LipTrill, Stage.Slide, Stage.Sung];
    private static readonly Stage[] SungFirst = [Stage.Sung, Stage.Slide, Stage.LipTrill, Stage.Humming];

    internal static Draft Give(Draft draft, IReadOnlyList<Need> needs, List<string> unmet)
    {
        foreach (Need need in needs)
        {
            if (need.Tonic is null && need.Pitch is null)
            {
                unmet.Add(NextPlanTexts.NoKeyFor(need));
            }
            else if (Answered(draft, need) is { } answered)
            {
                draft = answered;
            }
            else
            {
                unmet.Add(NextPlanTexts.NoStepFor(need));
            }
        }

        return draft;
    }

    /// <summary>A long rest of the other parts is worse than another step, but better than no answer.</summary>
    private static Draft? Answered(Draft draft, Need need) =>
        Tries(draft, need).FirstOrDefault(tried => tried.IsNoWorseThan(draft, PlanSeverity.Warning))
        ?? Tries(draft, need).FirstOrDefault(tried => tried.IsNoWorseThan(draft, PlanSeverity.Error));

    /// <summary>A step that answers another need already, then the other steps of fitting stages, then a new step; lazily, the best first.</summary>
    private static IEnumerable<Draft> Tries(Draft draft, Need need)
    {
        int[] steps = [.. StepsFor(draft, need)];
        IEnumerable<Draft> shared = steps.Where(index => draft.Steps[index].Answers.Count > 0).SelectMany(index => Change(draft, index, need, Approach.Stretch));
        IEnumerable<Draft> shaped = steps.Where(index => draft.Steps[index].Answers.Count == 0).SelectMany(index => Change(draft, index, need, Approach.Shape));
        return shared.Concat(shaped).Concat(Added(draft, need));
    }

    private static IEnumerable<int> StepsFor(Draft draft, Need need) =>
        from index in Enumerable.Range(0, draft.Steps.Count)
        let rank = Array.IndexOf(StagesFor(need), draft.ExerciseOf(index).Stage)
        where rank >= 0
        orderby rank, draft.ExerciseOf(index).Id == need.ExerciseId ? 0 : 1, index
        select index;

    private static IEnumerable<Draft> Change(Draft draft, int index, Need need, Func<Draft, PlanStep, Need, IEnumerable<PlanStep>> approach)
    {
        DraftStep old = draft.Steps[index];
        return approach(draft, old.Step, need).Select(step => draft.With(index, Answering(old with { Step = step }, need)));
    }

    private static IEnumerable<Draft> Added(Draft draft, Need need) =>
        from stage in StagesFor(need)
        from exercise in draft.Exercises.Values.OrderBy(exercise => exercise.Id, StringComparer.Ordinal)
        where exercise.Stage == stage && !draft.Uses(exercise.Id)
        from step in Approach.Shape(draft, new() { ExerciseId = exercise.Id }, need)
        select draft.Insert(Answering(new(step, null, []), need));

    /// <summary>What a step answers takes the place of the reason it was kept for.</summary>
    private static DraftStep Answering(DraftStep step, Need need)
    {
        IReadOnlyList<Need> answers = [.. step.Answers, need];
        return step with { Answers = answers, Step = step.Step with { Because = NextPlanTexts.Answers(answers) } };
    }

    private static Stage[] StagesFor(Need need) => Tiring.Contains(need.Kind) ? ReliefFirst : SungFirst;
}
