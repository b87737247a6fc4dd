namespace WarmupConsole.Music.Exercises;

/// <summary>
/// How much an exercise asks of the head, as one number that can be checked by hand. Sung: the different pitches of the line,
/// one for each turn of direction, one for each leap wider than a third, two for each different altered degree, and one for each
/// different note length beyond the first; of several lines the highest, and three for each line beyond the first. In counted
/// phases: the different phases.
/// </summary>
public static class Complexity
{
    /// <summary>Up to here a line is simple; above, complex.</summary>
    public const int Simple = 8;

    private const int WidestThird = 4;
    private const int ForAlteration = 2;
    private const int ForLine = 3;

    /// <summary>The number of an exercise; 1 or more.</summary>
    internal static int Of(Exercise exercise, IReadOnlyList<SungLine> lines) => lines.Count == 0
        ? exercise.Phases.Distinct().Count()
        : lines.Max(Of) + (ForLine * (lines.Count - 1));

    private static int Of(SungLine line) =>
        line.PitchCount
        + Turns(line)
        + line.Moves.Count(move => Math.Abs(move.Semitones) > WidestThird)
        + (ForAlteration * line.Notes.Select(note => note.Degree).Where(degree => degree.Alteration != 0).Distinct().Count())
        + line.Notes.Select(note => note.Length).Distinct().Count() - 1;

    private static int Turns(SungLine line)
    {
        int[] directions = [.. line.Moves.Select(move => Math.Sign(move.Semitones)).Where(direction => direction != 0)];
        return directions.Zip(directions.Skip(1)).Count(pair => pair.First != pair.Second);
    }
}
