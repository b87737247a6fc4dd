using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Marked ÷ exposed in every aspect. A rung counts once for each value that any of its pitches has.</summary>
internal static class RateTable
{
    internal static IEnumerable<RateRow> Of(History history, Situations situations)
    {
        (string Kind, double[] Marked)[] kinds = [.. history.Kinds.Select(kind => (kind.Kind, Marked(kind.Marks, situations)))];
        double[] exposed = [.. situations.Counts.Select(count => (double)count)];
        foreach (Aspect aspect in Enum.GetValues<Aspect>())
        {
            (string[] values, int[][] ofSituation) = Values(aspect, situations);
            double[] sung = Sums(exposed, ofSituation, values.Length);
            int[] ordered = [.. Enumerable.Range(0, values.Length).OrderBy(value => values[value], StringComparer.Ordinal)];
            foreach ((string kind, double[] weights) in kinds)
            {
                double[] marked = Sums(weights, ofSituation, values.Length);
                foreach (int value in ordered)
                {
                    yield return new(situations.Exposures.Part, kind, aspect, values[value], Rate.Of(Math.Min(sung[value], marked[value]), sung[value]));
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

    /// <summary>The different values of an aspect, and for each situation the numbers of those that its pitches have, each once.</summary>
    private static (string[] Values, int[][] OfSituation) Values(Aspect aspect, Situations situations)
    {
        Dictionary<string, int> numbers = [];
        List<int> own = [];
        int[][] ofSituation = new int[situations.Examples.Count][];
        for (int situation = 0; situation < ofSituation.Length; situation++)
        {
            ExposureRow example = situations.Examples[situation];
            own.Clear();
            foreach (ExposedPitch pitch in situations.Exposures.Lines[example.Cell].Pitches)
            {
                string value = situations.Values.Value(aspect, example, pitch);
                if (value.Length > 0 && Number(numbers, value) is int number && !own.Contains(number))
                {
                    own.Add(number);
                }
            }

            ofSituation[situation] = [.. own];
        }

        return ([.. numbers.OrderBy(value => value.Value).Select(value => value.Key)], ofSituation);
    }

    private static int Number(Dictionary<string, int> numbers, string value)
    {
        if (!numbers.TryGetValue(value, out int number))
        {
            numbers.Add(value, number = numbers.Count);
        }

        return number;
    }

    private static double[] Sums(double[] weights, int[][] values, int count)
    {
        double[] sums = new double[count];
        for (int situation = 0; situation < weights.Length; situation++)
        {
            foreach (int value in values[situation])
            {
                sums[value] += weights[situation];
            }
        }

        return sums;
    }
}
