namespace WarmupConsole.Music.Exercises;

/// <summary>An exercise with what is computed from it, for the rules about purposes.</summary>
internal sealed class PurposeFacts
{
    internal PurposeFacts(Exercise exercise)
    {
        Exercise = exercise;
        Lines = SungLine.AllOf(exercise);
        Figures = ExerciseFigures.Of(exercise, Lines);
    }

    internal Exercise Exercise { get; }

    /// <summary>Empty in counted phases.</summary>
    internal IReadOnlyList<SungLine> Lines { get; }

    internal ExerciseFigures Figures { get; }

    internal double CountsPerMinute => Exercise.Tempo.Default.BeatsPerMinute;
}
