using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>How much an exercise asks, in whole numbers: the same on every machine.</summary>
/// <param name="Points">0 easy to 100: span, complexity, quickness and phrase, a quarter each.</param>
/// <param name="Demand">For the order within a stage; openness counts too.</param>
internal readonly record struct Difficulty(int Points, int Demand)
{
    private const int Quarter = 25;
    private const int WidestSemitones = 16;
    private const int MostComplex = 24;
    private const int QuickestPerMinute = 300;
    private const int LongestMilliseconds = 10_000;
    private const int MillisecondsInMinute = 60_000;

    internal static Difficulty Of(Exercise exercise)
    {
        if (exercise.Pattern is not { } pattern)
        {
            return new(0, 0);
        }

        ExerciseDemands demands = ExerciseDemands.Of(pattern, exercise.Mode);
        long milliBpm = exercise.Tempo.Default.MilliBeatsPerMinute;
        SungLine line = new(pattern, exercise.Mode);
        int notesPerMinute = (int)(line.Notes.Count * milliBpm * Music.Rhythm.Beats.TicksPerBeat / (1000 * Math.Max(1, line.Length.Ticks)));
        int phrase = (int)(demands.LongestPhrase.Ticks * MillisecondsInMinute * 1000L / (milliBpm * Music.Rhythm.Beats.TicksPerBeat));
        int points = Share(demands.SpanSemitones, WidestSemitones) + Share(ExerciseFigures.Of(exercise).Complexity, MostComplex)
            + Share(notesPerMinute, QuickestPerMinute) + Share(phrase, LongestMilliseconds);
        return new(points, points + Openness(line));
    }

    private static int Share(int value, int most) => Quarter * Math.Clamp(value, 0, most) / most;

    /// <summary>Mean height of the vowels, 0 closed to 25 open; the chart has seven steps, so sixths are whole.</summary>
    private static int Openness(SungLine line)
    {
        int[] steps = [.. line.Notes.Select(note => VowelData.Height(note.Vowel)).OfType<double>().Select(height => (int)Math.Round(height * 6))];
        return steps.Length == 0 ? 0 : Quarter * steps.Sum() / (6 * steps.Length);
    }
}
