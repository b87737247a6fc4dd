using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Everything one part sang, in order, with equal lines counted together.</summary>
internal sealed class Exposures
{
    private readonly Dictionary<ExposedLine, int> cellOf = [];
    private readonly Dictionary<string, int> exerciseOf = [];

    internal Exposures(string part, IReadOnlyList<ExposureRow> rows)
    {
        (Part, Rows) = (part, rows);
        List<int> counts = [];
        List<int> exercises = [];
        foreach (ExposureRow row in rows)
        {
            if (cellOf.TryAdd(row.Line, counts.Count))
            {
                exerciseOf.TryAdd(row.Line.Exercise, exerciseOf.Count);
                exercises.Add(exerciseOf[row.Line.Exercise]);
                counts.Add(0);
            }

            counts[cellOf[row.Line]]++;
        }

        (Counts, CellExercises, Lines) = (counts, exercises, [.. cellOf.OrderBy(cell => cell.Value).Select(cell => cell.Key)]);
    }

    internal string Part { get; }

    internal IReadOnlyList<ExposureRow> Rows { get; }

    /// <summary>The different lines; a cell is an index into them.</summary>
    internal IReadOnlyList<ExposedLine> Lines { get; }

    /// <summary>For each cell, how often it was sung.</summary>
    internal IReadOnlyList<int> Counts { get; }

    /// <summary>For each cell, the number of its exercise, from 0.</summary>
    internal IReadOnlyList<int> CellExercises { get; }

    internal int ExerciseCount => exerciseOf.Count;

    internal int CellOf(int row) => cellOf[Rows[row].Line];
}
