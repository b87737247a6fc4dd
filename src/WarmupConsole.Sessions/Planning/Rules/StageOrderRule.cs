using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Stages come in their usual order; a short movement of the body may loosen up any place.</summary>
internal sealed class StageOrderRule : IPlanRule
{
    public string Name => "stage-order";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        Exercise? furthest = null;
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            if (furthest is not null && step.Exercise.Stage < furthest.Stage && step.Exercise.Stage != Stage.Body)
            {
                yield return new(PlanSeverity.Hint, Name, index, PlanTexts.OutOfOrder(index, step.Exercise, furthest));
            }

            furthest = furthest is null || step.Exercise.Stage > furthest.Stage ? step.Exercise : furthest;
        }
    }
}
