using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>What an exercise asks at its usual tempo; of several lines each time the one that asks most.</summary>
/// <param name="NotesPerSecond">In the busiest two beats; 0 in counted phases.</param>
/// <param name="LongestToneSeconds">The longest note; in counted phases the longest breath out.</param>
/// <param name="LongestPhraseSeconds">The longest stretch without a rest, or of breathing out: what one breath must carry.</param>
/// <param name="VowelCourse">Heights of the syllables in their order, 0 closed to 1 open; unknown vowels are left out.</param>
/// <param name="LoudnessCourse">The course of loudness as numbers, 0 for the softest word of <see cref="DynamicsData"/>; empty in counted phases.</param>
/// <param name="Complexity">See <see cref="Exercises.Complexity"/>.</param>
public sealed record ExerciseFigures(
    double NotesPerSecond,
    double LongestToneSeconds,
    double LongestPhraseSeconds,
    IReadOnlyList<double> VowelCourse,
    IReadOnlyList<int> LoudnessCourse,
    int Complexity)
{
    /// <summary>The figures of any exercise, sung or in counted phases.</summary>
    public static ExerciseFigures Of(Exercise exercise) => Of(exercise, SungLine.AllOf(exercise));

    internal static ExerciseFigures Of(Exercise exercise, IReadOnlyList<SungLine> lines) =>
        exercise.Pattern is { } pattern ? Sung(exercise, pattern, lines) : Counted(exercise);

    private static ExerciseFigures Sung(Exercise exercise, Pattern pattern, IReadOnlyList<SungLine> lines)
    {
        Tempo tempo = exercise.Tempo.Default;
        return new(
            lines.Max(line => line.MostNotesInTwoBeats) / 2.0 * tempo.BeatsPerMinute / 60,
            Seconds(tempo, lines.SelectMany(line => line.Notes).Max(note => note.Length)),
            Seconds(tempo, lines.Max(line => line.LongestPhrase)),
            [.. pattern.Notes.Where(note => note.Syllable is not null).Select(note => VowelData.Height(note.Syllable!.Vowel)).OfType<double>()],
            [.. exercise.Dynamics.Select(DynamicsData.Order)],
            Exercises.Complexity.Of(exercise, lines));
    }

    private static ExerciseFigures Counted(Exercise exercise)
    {
        (int longest, int run, int longestRun) = (0, 0, 0);
        foreach (BreathPhase phase in exercise.Phases)
        {
            bool isOut = phase.Action == BreathAction.Out;
            run = isOut ? run + phase.Counts : 0;
            longest = isOut ? Math.Max(longest, phase.Counts) : longest;
            longestRun = Math.Max(longestRun, run);
        }

        Tempo tempo = exercise.Tempo.Default;
        return new(0, Seconds(tempo, Beats.FromBeats(longest)), Seconds(tempo, Beats.FromBeats(longestRun)), [], [], Exercises.Complexity.Of(exercise, []));
    }

    private static double Seconds(Tempo tempo, Beats beats) => tempo.DurationOf(beats).TotalSeconds;
}
