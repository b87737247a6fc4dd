namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Every step leaves a moment for saying what comes, unless it repeats the step before it.</summary>
internal sealed class TalkLeftOutRule : IPlanRule
{
    /// <summary>An exercise cannot be named and begun in less.</summary>
    private const int LeastSeconds = 5;

    public string Name => "talk-left-out";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        int[] silent =
        [
            .. from step in warmup.Steps.Index()
               where step.Item.TalkSeconds < LeastSeconds && (step.Index == 0 || warmup.Steps[step.Index - 1].Exercise.Id != step.Item.Exercise.Id)
               select step.Index,
        ];
        if (silent.Length > 0)
        {
            yield return new(PlanSeverity.Hint, Name, silent[0], PlanTexts.TalkLeftOut(silent), "talk");
        }
    }
}
