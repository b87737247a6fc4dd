using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// The first vowel that any part sings is not an open one (common practice). Hums and trills are no vowels; unknown vowels are passed
/// over. Where parts have lines of their own, each begins for itself.
/// </summary>
internal sealed class ClosedVowelFirstRule : IPlanRule
{
    /// <summary>From open-mid vowels (ɛ, ɔ) on: above the fourth of seven steps of the vowel chart.</summary>
    private const double OpenFrom = 0.6;

    public string Name => "closed-vowel-first";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            string[] vowels = [.. FirstVowels(warmup.Choir, step.Exercise)];
            if (vowels.Length == 0)
            {
                continue;
            }

            if (Array.Find(vowels, IsOpen) is { } open)
            {
                yield return new(PlanSeverity.Error, Name, index, PlanTexts.OpensTooEarly(index, step.Exercise, open));
            }

            yield break;
        }
    }

    /// <summary>The first known vowel of each line that this choir sings; none for hums and trills.</summary>
    internal static IEnumerable<string> FirstVowels(Choir choir, Exercise exercise) => LinesOf(choir, exercise).Select(FirstVowel).OfType<string>();

    internal static bool IsOpen(string vowel) => VowelData.Height(vowel) >= OpenFrom;

    /// <summary>What this choir sings of an exercise, each line once.</summary>
    private static IEnumerable<Pattern> LinesOf(Choir choir, Exercise exercise) =>
        choir.Parts.Select(exercise.PatternFor).OfType<Pattern>().Distinct(ReferenceEqualityComparer.Instance).Cast<Pattern>();

    private static string? FirstVowel(Pattern line) => line.Notes
        .Select(note => note.Syllable?.Vowel ?? "")
        .FirstOrDefault(vowel => VowelData.Height(vowel) is not null && !VowelData.IsHalfClosed(vowel));
}
