namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>A few bars that are hard for a part.</summary>
/// <param name="From">Index of the first bar.</param>
/// <param name="To">Index of the last bar.</param>
/// <param name="Score">The points of all that is hard in them.</param>
/// <param name="Hardships">One for each reason, the heaviest first: its points together, and the pitch and amount of its heaviest moment.</param>
public sealed record Passage(int From, int To, double Score, IReadOnlyList<Hardship> Hardships)
{
    /// <summary>What is hard from one bar to another, or an empty one.</summary>
    public static Passage Of(IEnumerable<Hardship> all, int from, int to)
    {
        Hardship[] within = [.. all.Where(hardship => hardship.Bar >= from && hardship.Bar <= to)];
        return new(from, to, within.Sum(hardship => hardship.Points), [.. within.GroupBy(hardship => hardship.Reason).Select(Together).OrderByDescending(hardship => hardship.Points)]);
    }

    private static Hardship Together(IGrouping<HardReason, Hardship> same) =>
        same.MaxBy(hardship => hardship.Points) with { Points = same.Sum(hardship => hardship.Points), Amount = same.Max(hardship => hardship.Amount) };
}
