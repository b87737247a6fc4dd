namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>
/// How long after the moment that was heard a mark's first letter is typed: one row for each stretch of seconds. Common practice: two to
/// four seconds; the other rows leave room for a quick hand and for one that was busy.
/// </summary>
internal static class LagData
{
    private static readonly (double From, double To, double Share)[] Rows =
    [
        (0, 2, 0.10),
        (2, 4, 0.70),
        (4, 6, 0.15),
        (6, 10, 0.05),
    ];

    /// <summary>No mark is later than this.</summary>
    internal const double LongestSeconds = 10;

    /// <summary>The probability that the lag lies between two numbers of seconds; within a row it is spread evenly.</summary>
    internal static double Share(double from, double to)
    {
        double sum = 0;
        foreach ((double start, double end, double share) in Rows)
        {
            sum += Math.Max(0, Math.Min(to, end) - Math.Max(from, start)) / (end - start) * share;
        }

        return sum;
    }
}
