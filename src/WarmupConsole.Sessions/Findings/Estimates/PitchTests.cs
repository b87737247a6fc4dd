namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Asks of every pitch of a part whether one kind of mark crowds on it more than chance allows.</summary>
internal static class PitchTests
{
    /// <summary>Fewer marks of a kind support nothing.</summary>
    private const int LeastMarks = 3;

    /// <summary>The p-value of each pitch that was sung; none when there are too few marks.</summary>
    /// <param name="rows">What the part sang.</param>
    /// <param name="marked">The marked rows, each once.</param>
    /// <param name="without">Pitches that are known to be weak: rungs that hold one are left out.</param>
    internal static IReadOnlyDictionary<int, double> Of(IReadOnlyList<ExposureRow> rows, IReadOnlySet<int> marked, IReadOnlyList<int> without)
    {
        Dictionary<int, List<Stratum>> strata = [];
        if (marked.Count < LeastMarks)
        {
            return new Dictionary<int, double>();
        }

        for (int start = 0; start < rows.Count;)
        {
            int end = start + 1;
            while (end < rows.Count && rows[end].Stratum == rows[start].Stratum)
            {
                end++;
            }

            AddStratum(strata, rows, marked, without, (start, end));
            start = end;
        }

        return strata.ToDictionary(pitch => pitch.Key, pitch => StratifiedTest.PValue(pitch.Value));
    }

    private static void AddStratum(
        Dictionary<int, List<Stratum>> strata, IReadOnlyList<ExposureRow> rows, IReadOnlySet<int> marked, IReadOnlyList<int> without, (int Start, int End) span)
    {
        int[] compared = [.. Enumerable.Range(span.Start, span.End - span.Start).Where(row => !without.Any(rows[row].Line.Has))];
        int marks = compared.Count(marked.Contains);
        if (marks == 0)
        {
            return;
        }

        Dictionary<int, (int Exposed, int Marked)> counts = [];
        foreach (int row in compared)
        {
            int mark = marked.Contains(row) ? 1 : 0;
            foreach (Exposure.ExposedPitch pitch in rows[row].Line.Pitches)
            {
                (int exposed, int hits) = counts.GetValueOrDefault(pitch.Midi);
                counts[pitch.Midi] = (exposed + 1, hits + mark);
            }
        }

        foreach ((int pitch, (int exposed, int hits)) in counts)
        {
            strata.TryAdd(pitch, []);
            strata[pitch].Add(new(compared.Length, exposed, marks, hits));
        }
    }
}
