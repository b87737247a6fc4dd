using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// The sung steps grow in one respect up to the peak of the warm-up; single steps may fall back, the direction counts. The peak is
/// the sung step that takes a part furthest up in its range.
/// </summary>
internal sealed class TrendRule(string name, string words, Func<WarmupStep, double?> measure) : IPlanRule
{
    /// <summary>In fewer steps there is no direction to speak of.</summary>
    private const int FewestSteps = 4;

    public string Name => name;

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        (int Index, WarmupStep Step)[] sung = [.. warmup.Steps.Index().Where(step => step.Item is { Exercise.Stage: Stage.Sung, Ladder.Rungs.Count: > 0 })];
        if (sung.Length >= FewestSteps && Peak(sung) is var peak && Falls([.. sung.TakeWhile(step => step.Index <= peak).Select(step => measure(step.Step)).OfType<double>()]))
        {
            yield return new(PlanSeverity.Hint, Name, peak, PlanTexts.AgainstTrend(peak, warmup.Steps[peak].Exercise, words));
        }
    }

    /// <summary>Of steps that reach as far the last one.</summary>
    private static int Peak((int Index, WarmupStep Step)[] sung) => sung.Reverse().MaxBy(step => Height(step.Step)).Index;

    /// <summary>How near the step takes a part to the top of its comfortable range, in semitones; positive above it.</summary>
    private static int Height(WarmupStep step) => step.Ladder.Rungs
        .SelectMany(rung => rung.Parts).Where(part => part.Sings)
        .Select(part => part.Span.High.Midi - part.Part.Range.Comfortable.High.Midi)
        .DefaultIfEmpty(int.MinValue).Max();

    /// <summary>True when of all pairs of steps more than two thirds go the wrong way.</summary>
    private static bool Falls(double[] values)
    {
        int down = Pairs(values).Count(pair => pair.Later < pair.Earlier);
        int up = Pairs(values).Count(pair => pair.Later > pair.Earlier);
        return values.Length >= FewestSteps && down > 2 * up && 3 * down > 2 * Pairs(values).Count();
    }

    private static IEnumerable<(double Earlier, double Later)> Pairs(double[] values) =>
        values.SelectMany((earlier, index) => values.Skip(index + 1).Select(later => (earlier, later)));
}
