namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Marked ÷ exposed in every aspect. A rung counts once for each value that any of its pitches has.</summary>
internal static class RateTable
{
    internal static IEnumerable<RateRow> Of(History history, Situations situations)
    {
        (string Kind, double[] Marked)[] kinds = [.. history.Kinds.Select(kind => (kind.Kind, Marked(kind.Marks, situations)))];
        foreach (Aspect aspect in Enum.GetValues<Aspect>())
        {
            string[][] values = [.. situations.Examples.Select(example =>
                example.Line.Pitches.Select(pitch => situations.Values.Value(aspect, example.Rung, pitch)).Where(value => value.Length > 0).Distinct().ToArray())];
            IReadOnlyList<KeyValuePair<string, double>> exposed = [.. Sums(values, [.. situations.Counts.Select(count => (double)count)]).OrderBy(value => value.Key, StringComparer.Ordinal)];
            foreach ((string kind, double[] weights) in kinds)
            {
                Dictionary<string, double> marked = Sums(values, weights);
                foreach ((string value, double sung) in exposed)
                {
                    yield return new(situations.Exposures.Part, kind, aspect, value, Rate.Of(Math.Min(sung, marked[value]), sung));
                }
            }
        }
    }

    /// <summary>For each situation, the weight of the marks that may mean it.</summary>
    private static double[] Marked(IReadOnlyList<PartMark> marks, Situations situations)
    {
        double[] marked = new double[situations.Counts.Count];
        foreach (PartMark mark in marks)
        {
            foreach (MarkedRow row in mark.Candidates)
            {
                marked[situations.Of(row.Row)] += mark.Share * row.Weight;
            }
        }

        return marked;
    }

    private static Dictionary<string, double> Sums(string[][] values, double[] weights)
    {
        Dictionary<string, double> sums = [];
        foreach ((string[] same, double weight) in values.Zip(weights))
        {
            foreach (string value in same)
            {
                sums[value] = sums.GetValueOrDefault(value) + weight;
            }
        }

        return sums;
    }
}
