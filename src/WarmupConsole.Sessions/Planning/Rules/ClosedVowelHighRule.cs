using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// No closed vowel on a note above a part's comfortable range: high notes ask for more room in the mouth (common practice). Hums
/// and trills are no vowels; slides pass through.
/// </summary>
internal sealed class ClosedVowelHighRule : IPlanRule
{
    /// <summary>Closed and nearly closed vowels (i, u, ɪ, ʊ): the first two of seven steps of the vowel chart.</summary>
    private const double ClosedTo = 0.2;

    public string Name => "closed-vowel-high";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            if (step.Exercise is { Stage: Stage.Sung, Pattern: { } pattern }
                && ExerciseDemands.Of(pattern, step.Exercise.Mode).TopVowel is var vowel && IsClosed(vowel)
                && step.Ladder.Rungs.FirstNote((range, note) => note.Midi > range.Comfortable.High.Midi) is var (rung, part, note))
            {
                yield return new(PlanSeverity.Hint, Name, index, PlanTexts.ClosedVowelHigh(index, step.Exercise, part, rung.Tonic, $"{note} on [{vowel}]"), "keys");
            }
        }
    }

    private static bool IsClosed(string vowel) => !VowelData.IsHalfClosed(vowel) && VowelData.Height(vowel) is <= ClosedTo;
}
