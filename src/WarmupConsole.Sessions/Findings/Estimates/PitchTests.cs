using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Asks of every pitch of a part whether one kind of mark crowds on it more than chance allows.</summary>
internal sealed class PitchTests
{
    /// <summary>Fewer marks of a kind support nothing.</summary>
    private const int LeastMarks = 3;
    private const int Pitches = 128;

    private readonly Exposures exposures;
    private readonly int[] without;
    private readonly StratifiedSum?[] tests = new StratifiedSum?[Pitches];

    // Of one stratum.
    private readonly int[] exposed = new int[Pitches];
    private readonly int[] hits = new int[Pitches];

    private PitchTests(Exposures exposures, int[] without) => (this.exposures, this.without) = (exposures, without);

    /// <summary>The p-value of each pitch that was sung where there are marks; none when there are too few.</summary>
    /// <param name="exposures">What the part sang.</param>
    /// <param name="marked">The rows that were marked; in order, each once.</param>
    /// <param name="without">Pitches that are known to be weak: rungs that hold one are left out.</param>
    internal static IReadOnlyDictionary<int, double> Of(Exposures exposures, ReadOnlySpan<int> marked, int[] without)
    {
        if (marked.Length < LeastMarks)
        {
            return new Dictionary<int, double>();
        }

        PitchTests pitches = new(exposures, without);
        while (!marked.IsEmpty)
        {
            (int start, int end) = exposures.RowsOf(exposures.Rows[marked[0]].Stratum);
            int count = marked.IndexOfAnyExceptInRange(start, end - 1) is >= 0 and int others ? others : marked.Length;
            pitches.AddStratum((start, end), marked[..count]);
            marked = marked[count..];
        }

        return pitches.tests.Index().Where(test => test.Item is not null).ToDictionary(test => test.Index, test => test.Item!.PValue);
    }

    private void AddStratum((int Start, int End) rows, ReadOnlySpan<int> marked)
    {
        Array.Clear(exposed);
        Array.Clear(hits);
        (int compared, int marks) = (0, 0);
        for (int row = rows.Start; row < rows.End; row++)
        {
            ExposedLine line = exposures.LineOf(row);
            if (IsCompared(line))
            {
                compared++;
                int mark = marked.Contains(row) ? 1 : 0;
                marks += mark;
                Count(line, mark);
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
