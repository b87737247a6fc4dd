namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>
/// Finds the passages of a line: the heaviest bar with its neighbours that are at least nearly half as heavy, four bars at most, then the
/// heaviest of what is left, and so on.
/// </summary>
internal static class Passages
{
    private const int MostBars = 4;
    private const double Neighbour = 0.4;

    /// <summary>A bar with less than this is not worth a passage.</summary>
    private const double Least = 1;

    /// <summary>The heaviest first.</summary>
    internal static IReadOnlyList<Passage> Find(IReadOnlyList<Hardship> hardships, double[] bars)
    {
        bool[] taken = new bool[bars.Length];
        ILookup<int, Hardship> byBar = hardships.ToLookup(hardship => hardship.Bar);
        List<Passage> passages = [];
        foreach (int peak in Enumerable.Range(0, bars.Length).Where(bar => bars[bar] >= Least).OrderByDescending(bar => bars[bar]).ThenBy(bar => bar))
        {
            if (!taken[peak])
            {
                (int from, int to) = Around(peak, bars, taken);
                Array.Fill(taken, true, from, to - from + 1);
                passages.Add(Passage.Of(Enumerable.Range(from, to - from + 1).SelectMany(bar => byBar[bar]), from, to));
            }
        }

        return [.. passages.OrderByDescending(passage => passage.Score).ThenBy(passage => passage.From)];
    }

    private static (int From, int To) Around(int peak, double[] bars, bool[] taken)
    {
        (int from, int to) = (peak, peak);
        while (to - from + 1 < MostBars)
        {
            double before = Weight(from - 1);
            double after = Weight(to + 1);
            if (Math.Max(before, after) < Neighbour * bars[peak])
            {
                break;
            }

            (from, to) = after >= before ? (from, to + 1) : (from - 1, to);
        }

        return (from, to);

        double Weight(int bar) => bar < 0 || bar >= bars.Length || taken[bar] ? -1 : bars[bar];
    }
}
