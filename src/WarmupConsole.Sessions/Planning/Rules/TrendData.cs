using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>One row for each respect in which a warm-up grows (common practice), with how it is measured in a sung step.</summary>
internal static class TrendData
{
    internal static IReadOnlyList<IPlanRule> Rules { get; } =
    [
        new TrendRule("narrow-before-open", "from open vowels to closed ones", Openness),
        new TrendRule("slow-before-quick", "from quick to slow", NotesPerSecond),
        new TrendRule("short-before-long", "from long phrases to short ones", LongestPhraseSeconds),
        new TrendRule("small-before-wide", "from wide spans to small ones", step => ExerciseDemands.Of(step.Exercise.Pattern!, step.Exercise.Mode).SpanSemitones),
        new TrendRule("simple-before-complex", "from complex lines to simple ones", step => ExerciseFigures.Of(step.Exercise).Complexity),
    ];

    /// <summary>Mean height of the vowels, 0 closed to 1 open; null when none is known.</summary>
    private static double? Openness(WarmupStep step)
    {
        double[] heights = [.. step.Exercise.Pattern!.Notes.Select(note => VowelData.Height(note.Syllable?.Vowel ?? "")).OfType<double>()];
        return heights.Length == 0 ? null : heights.Average();
    }

    private static double? NotesPerSecond(WarmupStep step) =>
        step.Exercise.Pattern!.Notes.Count(note => note.Degree is not null) / Seconds(step, step.Exercise.Pattern.Length);

    private static double? LongestPhraseSeconds(WarmupStep step) =>
        Seconds(step, ExerciseDemands.Of(step.Exercise.Pattern!, step.Exercise.Mode).LongestPhrase);

    private static double Seconds(WarmupStep step, Beats beats) => step.Tempo.DurationOf(beats).TotalSeconds;
}
