namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// When a weak pitch is worse: among the rungs that hold it, those with one vowel (or loudness, length of note, third of the warm-up) against the
/// others, session by session. The questions asked of one finding share one allowance for error (Holm, 1979).
/// </summary>
internal static class CircumstancesOf
{
    private const double Allowance = 0.05;
    private const int LeastExposed = 6;

    internal static IReadOnlyList<Circumstance> Pitch(Situations situations, int pitch, bool[] marked)
    {
        List<Circumstance> asked = [];
        foreach (Aspect aspect in (Aspect[])[Aspect.Vowel, Aspect.Loudness, Aspect.Length, Aspect.Minute])
        {
            string[] ofSituation = [.. situations.Examples.Select(example => Value(situations.Values, aspect, example, pitch))];
            string[] values = [.. ofSituation.Where(value => value.Length > 0).Distinct().Order(StringComparer.Ordinal)];
            List<ValueCount[]> evenings = Evenings(situations, [.. ofSituation.Select(value => Array.IndexOf(values, value))], marked, values.Length);
            ValueCount[] wholes = [.. evenings.Select(counts => new ValueCount(counts.Sum(count => count.Sung), counts.Sum(count => count.Marked)))];
            asked.AddRange(values.Select((value, index) => Ask(aspect, value, [.. evenings.Zip(wholes, (counts, whole) => Against(counts[index], whole))])).OfType<Circumstance>());
        }

        return Holm(asked);
    }

    private static string Value(AspectOf values, Aspect aspect, ExposureRow example, int pitch) =>
        example.Line.Has(pitch) ? values.Value(aspect, example, example.Line.Pitches.First(one => one.Midi == pitch)) : "";

    /// <summary>For each evening, how often the pitch was sung and marked under each value.</summary>
    /// <param name="situations">Of the part.</param>
    /// <param name="valueOf">For each situation, the number of its value; below 0 without the pitch, or where it is not known.</param>
    /// <param name="marked">For each row, whether it was marked.</param>
    /// <param name="values">How many values there are.</param>
    private static List<ValueCount[]> Evenings(Situations situations, int[] valueOf, bool[] marked, int values)
    {
        List<ValueCount[]> evenings = [];
        int session = -1;
        ExposureRow[] rows = situations.Exposures.Rows;
        for (int row = 0; row < rows.Length; row++)
        {
            int value = valueOf[situations.Of(row)];
            if (value >= 0)
            {
                if (rows[row].Session != session)
                {
                    evenings.Add(new ValueCount[values]);
                    session = rows[row].Session;
                }

                ref ValueCount count = ref evenings[^1][value];
                count = new(count.Sung + 1, count.Marked + (marked[row] ? 1 : 0));
            }
        }

        return evenings;
    }

    private static Stratum Against(ValueCount one, ValueCount whole) => new(whole.Sung, one.Sung, whole.Marked, one.Marked);

    private static Circumstance? Ask(Aspect aspect, string value, Stratum[] strata)
    {
        (int there, int hits) = (strata.Sum(stratum => stratum.Exposed), strata.Sum(stratum => stratum.MarkedExposed));
        (int otherwise, int others) = (strata.Sum(stratum => stratum.Size) - there, strata.Sum(stratum => stratum.Marked) - hits);
        return there < LeastExposed || otherwise < LeastExposed
            ? null
            : new(aspect, value, Rate.Of(hits, there), Rate.Of(others, otherwise), StratifiedTest.PValue(strata));
    }

    private static Circumstance[] Holm(List<Circumstance> asked)
    {
        Circumstance[] ordered = [.. asked.OrderBy(circumstance => circumstance.Chance)];
        return [.. ordered.TakeWhile((circumstance, rank) => circumstance.Chance <= Allowance / (ordered.Length - rank))];
    }

    private readonly record struct ValueCount(int Sung, int Marked);
}
