using System.Runtime.InteropServices;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Everything one part sang, a row for each rung in order. Its different lines are cells: what is true of a line is asked once.</summary>
/// <param name="part">Id of the part.</param>
/// <param name="most">How many rows there will be at most.</param>
internal sealed class Exposures(string part, int most)
{
    private readonly List<ExposureRow> rows = new(most);
    private readonly Dictionary<ExposedLine, int> cellOf = [];
    private readonly List<ExposedLine> lines = [];
    private readonly List<int> counts = [];
    private readonly List<int> exercises = [];
    private readonly Dictionary<string, int> exerciseOf = [];

    /// <summary>The first row of each stratum.</summary>
    private readonly List<int> strata = [];

    internal string Part => part;

    internal ReadOnlySpan<ExposureRow> Rows => CollectionsMarshal.AsSpan(rows);

    /// <summary>The line of each cell.</summary>
    internal IReadOnlyList<ExposedLine> Lines => lines;

    /// <summary>For each cell, how often it was sung.</summary>
    internal ReadOnlySpan<int> Counts => CollectionsMarshal.AsSpan(counts);

    /// <summary>For each cell, the number of its exercise, from 0.</summary>
    internal ReadOnlySpan<int> CellExercises => CollectionsMarshal.AsSpan(exercises);

    internal int ExerciseCount => exerciseOf.Count;

    /// <summary>Minutes of the longest warm-up, as far as the part sang.</summary>
    internal double Longest { get; private set; }

    /// <summary>Adds a rung; returns its row.</summary>
    /// <param name="line">What the part was asked for.</param>
    /// <param name="rung">The rung.</param>
    /// <param name="session">Index of the session.</param>
    /// <param name="isFirst">True for the first of a step.</param>
    internal int Add(ExposedLine line, in ExposedRung rung, int session, bool isFirst)
    {
        if (isFirst)
        {
            strata.Add(rows.Count);
        }

        int cell = CellOf(line);
        counts[cell]++;
        Longest = Math.Max(Longest, rung.Minute);
        rows.Add(new(cell, rung.MilliBpm, rung.Minute, session, strata.Count - 1));
        return rows.Count - 1;
    }

    internal ExposedLine LineOf(int row) => lines[rows[row].Cell];

    /// <summary>The first row of a stratum, and that of the next one.</summary>
    internal (int Start, int End) RowsOf(int stratum) => (strata[stratum], stratum + 1 < strata.Count ? strata[stratum + 1] : rows.Count);

    /// <summary>How often the part sang a pitch.</summary>
    internal int Exposed(int pitch)
    {
        int sum = 0;
        for (int cell = 0; cell < counts.Count; cell++)
        {
            sum += lines[cell].Has(pitch) ? counts[cell] : 0;
        }

        return sum;
    }

    /// <summary>The rows that hold a pitch, in order.</summary>
    internal int[] RowsWith(int pitch)
    {
        bool[] holds = [.. lines.Select(line => line.Has(pitch))];
        int[] with = new int[Exposed(pitch)];
        int count = 0;
        for (int row = 0; count < with.Length; row++)
        {
            if (holds[rows[row].Cell])
            {
                with[count++] = row;
            }
        }

        return with;
    }

    /// <summary>The rows in order, each once.</summary>
    internal static int[] InOrder(IEnumerable<int> rows)
    {
        int[] ordered = [.. rows];
        Array.Sort(ordered);
        int count = 0;
        foreach (int row in ordered)
        {
            if (count == 0 || ordered[count - 1] != row)
            {
                ordered[count++] = row;
            }
        }

        return ordered[..count];
    }

    private int CellOf(ExposedLine line)
    {
        if (!cellOf.TryGetValue(line, out int cell))
        {
            cellOf.Add(line, cell = lines.Count);
            lines.Add(line);
            counts.Add(0);
            exerciseOf.TryAdd(line.Exercise, exerciseOf.Count);
            exercises.Add(exerciseOf[line.Exercise]);
        }

        return cell;
    }
}
