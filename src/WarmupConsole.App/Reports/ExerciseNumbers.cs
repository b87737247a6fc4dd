using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.App.Reports;

/// <summary>What a sung exercise asks of the voice, in numbers, at its usual tempo; of several lines each time the one that asks most.</summary>
/// <param name="Low">Semitones from the tonic to the lowest note.</param>
/// <param name="High">Semitones from the tonic to the highest note.</param>
/// <param name="LeapUp">The widest leap upwards, in semitones.</param>
/// <param name="LeapDown">The widest leap downwards, in semitones.</param>
/// <param name="NotesPerSecond">In the busiest two beats.</param>
/// <param name="LongestToneSeconds">The longest note.</param>
/// <param name="LongestPhraseSeconds">What one breath must carry.</param>
/// <param name="VowelCourse">IPA height of each syllable, 0 closed to 1 open; unknown vowels are left out.</param>
/// <param name="LoudnessCourse">From 0, the softest word.</param>
/// <param name="Complexity">See docs/plan-format.md.</param>
/// <param name="Voices">How many lines are sung at once.</param>
/// <param name="TopDegree">The degree that is highest.</param>
/// <param name="TopVowel">IPA of what is sung on it when it first comes; empty when unknown.</param>
internal sealed record ExerciseNumbers(
    int Low,
    int High,
    int LeapUp,
    int LeapDown,
    double NotesPerSecond,
    double LongestToneSeconds,
    double LongestPhraseSeconds,
    IReadOnlyList<double> VowelCourse,
    IReadOnlyList<int> LoudnessCourse,
    int Complexity,
    int Voices,
    string TopDegree,
    string TopVowel)
{
    /// <summary>Null for body and breathing.</summary>
    internal static ExerciseNumbers? Of(Exercise exercise)
    {
        if (!exercise.IsSung)
        {
            return null;
        }

        ExerciseDemands[] lines = [.. exercise.Lines.Select(line => ExerciseDemands.Of(line, exercise.Mode))];
        ExerciseDemands top = lines.MaxBy(line => line.High.Semitones)!;
        ExerciseFigures figures = ExerciseFigures.Of(exercise);
        return new(
            lines.Min(line => line.Low.Semitones),
            top.High.Semitones,
            lines.Max(line => line.LargestLeapUpSemitones),
            lines.Max(line => line.LargestLeapDownSemitones),
            Math.Round(figures.NotesPerSecond, 2),
            Math.Round(figures.LongestToneSeconds, 1),
            Math.Round(figures.LongestPhraseSeconds, 1),
            [.. figures.VowelCourse.Select(height => Math.Round(height, 2))],
            figures.LoudnessCourse,
            figures.Complexity,
            lines.Length,
            DegreeText.Write(top.TopDegree),
            top.TopVowel);
    }
}
