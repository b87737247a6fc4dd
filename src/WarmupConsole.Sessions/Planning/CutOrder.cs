using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Planning.Rules;

namespace WarmupConsole.Sessions.Planning;

/// <summary>
/// What a warm-up that runs late can do without, the least harmful first (common practice): the way back of long ladders, then steps
/// whose purposes other steps serve as well. Never body and breathing, the first half-closed step, a step that answers a finding, or settling.
/// </summary>
public static class CutOrder
{
    /// <summary>A way back of fewer keys is not worth a decision.</summary>
    private const int LongWayBack = 3;

    /// <param name="ahead">The present step and those to come, in their order, without what the director put in: that was meant.</param>
    /// <param name="led">The exercises of the steps that came before.</param>
    public static IReadOnlyList<StepCut> Of(IReadOnlyList<StepAhead> ahead, IReadOnlyList<Exercise> led)
    {
        ArgumentNullException.ThrowIfNull(ahead);
        ArgumentNullException.ThrowIfNull(led);
        Exercise[] all = [.. led, .. ahead.Select(step => step.Step.Exercise)];
        Exercise? first = Array.Find(all, HalfClosedFirstRule.IsHalfClosed);
        StepAhead[] free = [.. ahead.Where(step => MayGo(step.Step) && step.Step.Exercise != first)];
        return
        [
            .. free.Select(WayBack).OfType<StepCut>().OrderByDescending(cut => cut.Saves),
            .. free.Where(step => !step.HasBegun).Select(step => (Step: step, Times: TimesServed(step.Step.Exercise, all)))
                .Where(step => step.Times > 0).OrderByDescending(step => step.Times).Select(step => LeftOut(step.Step)),
        ];
    }

    private static bool MayGo(WarmupStep step) =>
        step.Exercise.IsSung && step.Exercise.Stage != Stage.Settling && !step.Plan.Because.Any(NextPlanTexts.IsAnswer);

    private static StepCut? WayBack(StepAhead step)
    {
        if (step.Step.Plan.Keys.Shape is not (LadderShape.UpAndBack or LadderShape.DownAndBack) || step.Rungs.Count == 0)
        {
            return null;
        }

        int kept = Math.Max(step.Standing, Turning(step) + 1);
        return step.Rungs.Count - kept < LongWayBack ? null
            : new(step.Number, kept, step.Step.Lasts(step.Rungs.Count) - step.Step.Lasts(kept));
    }

    /// <summary>The key at which the ladder turns: the furthest one from its beginning, in its direction.</summary>
    private static int Turning(StepAhead step)
    {
        int direction = step.Step.Plan.Keys.Shape == LadderShape.UpAndBack ? 1 : -1;
        return step.Rungs.Index().MaxBy(rung => direction * rung.Item.Tonic.Midi).Index;
    }

    private static StepCut LeftOut(StepAhead step) => new(step.Number, 0, step.Step.Lasts(step.Rungs.Count));

    /// <summary>How many other steps serve the purpose that is served least; 0 when one would be lost, or none is known.</summary>
    private static int TimesServed(Exercise exercise, Exercise[] all) =>
        exercise.Purposes.Select(purpose => all.Count(other => other.Purposes.Contains(purpose)) - 1).DefaultIfEmpty(0).Min();
}
