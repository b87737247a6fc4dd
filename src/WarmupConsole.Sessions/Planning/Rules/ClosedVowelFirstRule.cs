using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>The first vowel that is sung is not an open one (common practice). Hums and trills are no vowels; unknown vowels are passed over.</summary>
internal sealed class ClosedVowelFirstRule : IPlanRule
{
    /// <summary>From open-mid vowels (ɛ, ɔ) on: above the fourth of seven steps of the vowel chart.</summary>
    private const double OpenFrom = 0.6;

    public string Name => "closed-vowel-first";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        (int step, Exercise? exercise) = warmup.FirstWhere(SingsVowel);
        if (exercise?.Pattern is { } pattern && VowelData.Height(pattern.FirstVowel()) is >= OpenFrom)
        {
            yield return new(PlanSeverity.Error, Name, step, PlanTexts.OpensTooEarly(step, exercise, pattern.FirstVowel()));
        }
    }

    private static bool SingsVowel(Exercise exercise) => exercise.Pattern is { } pattern
        && VowelData.Height(pattern.FirstVowel()) is not null && !VowelData.IsHalfClosed(pattern.FirstVowel());
}
