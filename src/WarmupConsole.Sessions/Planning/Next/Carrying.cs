using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What is taken over from the last plan. Its reasons were those of its own evening, so each is given anew.</summary>
internal static class Carrying
{
    internal static DraftStep Step(NextPlanInput input, int index)
    {
        PlanStep old = input.Last.Steps[index];
        Exercise exercise = input.Exercises[old.ExerciseId];
        bool isOwed = input.Review is { } review && review.Steps.Concat(review.NotBegun).Any(step => !step.HasWork && step.Step == index && step.ExerciseId == old.ExerciseId);
        bool wasNew = old.TalkSeconds > exercise.TalkSeconds && !isOwed && !input.Earlier.Any(plan => plan.Steps.Any(step => step.ExerciseId == old.ExerciseId));
        string reason = isOwed ? NextPlanTexts.Owed(input.LastDay) : NextPlanTexts.Kept(input.LastDay, exercise.Purposes);
        DraftStep carried = new DraftStep(old with { TalkSeconds = wasNew ? null : old.TalkSeconds }, index, []) { IsSettled = isOwed }.OnlyBecause(reason);
        return wasNew ? carried.Because(NextPlanTexts.LessTalk(exercise.TalkSeconds, old.TalkSeconds!.Value)) : carried;
    }

    internal static IReadOnlyList<RuleOff> Off(NextPlanInput input) =>
        [.. input.Last.Off.Select(off => off with { Because = NextPlanTexts.StillOff(input.LastDay, off.Because) })];

    /// <summary>A rule stays off only where the new plan would break it as well.</summary>
    internal static Plan WithoutIdleRules(Draft draft)
    {
        HashSet<string> needed = [.. PlanCheck.Check(draft.Ready(), draft.Input.Before).Off.Select(remark => remark.Rule)];
        return draft.Finish() with { Off = [.. draft.Frame.Off.Where(off => needed.Contains(off.Rule))] };
    }
}
