using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Everything one part sang, in order, with equal lines counted together.</summary>
internal sealed class Exposures
{
    private readonly Dictionary<string, int> exerciseOf = [];
    private readonly int[] cellOfRow;

    internal Exposures(string part, ExposureRow[] rows)
    {
        (Part, Rows, cellOfRow) = (part, rows, new int[rows.Length]);
        Dictionary<ExposedLine, int> cellOf = [];
        List<int> counts = [];
        List<int> exercises = [];
        for (int row = 0; row < rows.Length; row++)
        {
            ExposedLine line = rows[row].Line;
            if (!cellOf.TryGetValue(line, out int cell))
            {
                cellOf.Add(line, cell = counts.Count);
                exerciseOf.TryAdd(line.Exercise, exerciseOf.Count);
                exercises.Add(exerciseOf[line.Exercise]);
                counts.Add(0);
            }

            cellOfRow[row] = cell;
            counts[cell]++;
        }

        (Counts, CellExercises, Lines) = ([.. counts], [.. exercises], [.. cellOf.OrderBy(cell => cell.Value).Select(cell => cell.Key)]);
    }

    internal string Part { get; }

    internal ExposureRow[] Rows { get; }

    /// <summary>The different lines; a cell is an index into them.</summary>
    internal ExposedLine[] Lines { get; }

    /// <summary>For each cell, how often it was sung.</summary>
    internal int[] Counts { get; }

    /// <summary>For each cell, the number of its exercise, from 0.</summary>
    internal int[] CellExercises { get; }

    internal int ExerciseCount => exerciseOf.Count;

    internal int CellOf(int row) => cellOfRow[row];

    /// <summary>How often the part sang a pitch.</summary>
    internal int Exposed(int pitch) => Lines.Index().Sum(cell => cell.Item.Has(pitch) ? Counts[cell.Index] : 0);

    /// <summary>One answer for each row.</summary>
    internal bool[] Among(IEnumerable<int> rows)
    {
        bool[] among = new bool[Rows.Length];
        foreach (int row in rows)
        {
            among[row] = true;
        }

        return among;
    }
}
