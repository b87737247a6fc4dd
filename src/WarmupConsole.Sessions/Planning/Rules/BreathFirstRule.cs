using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Nothing sounds before a breathing exercise (common practice).</summary>
internal sealed class BreathFirstRule : IPlanRule
{
    public string Name => "breath-first";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        (int step, Exercise? exercise) = warmup.FirstWhere(exercise => exercise.Stage >= Stage.Breathing);
        if (exercise is not null && exercise.Stage != Stage.Breathing)
        {
            yield return new(PlanSeverity.Error, Name, step, PlanTexts.SingsBeforeBreath(step, exercise));
        }
    }
}
