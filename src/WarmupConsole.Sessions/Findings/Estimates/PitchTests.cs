using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Asks of every pitch of a part whether one kind of mark crowds on it more than chance allows.</summary>
internal sealed class PitchTests
{
    /// <summary>Fewer marks of a kind support nothing.</summary>
    private const int LeastMarks = 3;
    private const int Pitches = 128;

    private readonly ExposureRow[] rows;
    private readonly bool[] marked;
    private readonly IReadOnlyList<int> without;
    private readonly StratifiedSum?[] tests = new StratifiedSum?[Pitches];

    // Of one stratum.
    private readonly int[] exposed = new int[Pitches];
    private readonly int[] hits = new int[Pitches];

    private PitchTests(ExposureRow[] rows, bool[] marked, IReadOnlyList<int> without) => (this.rows, this.marked, this.without) = (rows, marked, without);

    /// <summary>The p-value of each pitch that was sung; none when there are too few marks.</summary>
    /// <param name="rows">What the part sang.</param>
    /// <param name="marked">For each row, whether it was marked.</param>
    /// <param name="without">Pitches that are known to be weak: rungs that hold one are left out.</param>
    internal static IReadOnlyDictionary<int, double> Of(ExposureRow[] rows, bool[] marked, IReadOnlyList<int> without)
    {
        if (marked.Count(mark => mark) < LeastMarks)
        {
            return new Dictionary<int, double>();
        }

        PitchTests pitches = new(rows, marked, without);
        for (int start = 0; start < rows.Length;)
        {
            int end = start + 1;
            while (end < rows.Length && rows[end].Stratum == rows[start].Stratum)
            {
                end++;
            }

            pitches.AddStratum(start, end);
            start = end;
        }

        return pitches.tests.Index().Where(test => test.Item is not null).ToDictionary(test => test.Index, test => test.Item!.PValue);
    }

    private void AddStratum(int start, int end)
    {
        if (marked.AsSpan(start, end - start).IndexOf(true) < 0)
        {
            return;
        }

        Array.Clear(exposed);
        Array.Clear(hits);
        (int compared, int marks) = (0, 0);
        for (int row = start; row < end; row++)
        {
            if (IsCompared(rows[row].Line))
            {
                compared++;
                int mark = marked[row] ? 1 : 0;
                marks += mark;
                Count(rows[row].Line, mark);
            }
        }

        for (int pitch = 0; marks > 0 && pitch < Pitches; pitch++)
        {
            if (exposed[pitch] > 0)
            {
                (tests[pitch] ??= new()).Add(new(compared, exposed[pitch], marks, hits[pitch]));
            }
        }
    }

    private bool IsCompared(ExposedLine line)
    {
        foreach (int weak in without)
        {
            if (line.Has(weak))
            {
                return false;
            }
        }

        return true;
    }

    private void Count(ExposedLine line, int mark)
    {
        foreach (ExposedPitch pitch in line.Pitches)
        {
            exposed[pitch.Midi]++;
            hits[pitch.Midi] += mark;
        }
    }
}
