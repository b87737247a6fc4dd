namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>
/// What a plan is chosen from, and by what. Its value is the own points of its choices, and for each aim the points for being served
/// once, once more, and so on. docs/planner.md says where the points come from.
/// </summary>
public sealed record PlanProblem
{
    /// <summary>In the order in which a plan has them.</summary>
    public required IReadOnlyList<Choice> Choices { get; init; }

    /// <summary>Points of each aim for being served the first time, the second and so on; none is higher than the one before it or below 0.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> Aims { get; init; }

    /// <summary>Least time of the whole, in milliseconds.</summary>
    public required int Shortest { get; init; }

    /// <summary>Most time of the whole, in milliseconds.</summary>
    public required int Longest { get; init; }

    /// <summary>Most steps; 1–12.</summary>
    public required int MostSteps { get; init; }

    /// <summary>Most exercises that the choir never sang.</summary>
    public required int MostNew { get; init; }

    /// <summary>Least and most steps of each <see cref="Band"/>, in their order.</summary>
    public required IReadOnlyList<(int Least, int Most)> Bands { get; init; }

    /// <summary>The value of some of its choices together, by index.</summary>
    public long ValueOf(IEnumerable<int> chosen)
    {
        int[] choices = [.. chosen];
        return choices.Sum(choice => (long)Choices[choice].Own)
            + choices.SelectMany(choice => Choices[choice].Aims).CountBy(aim => aim).Sum(aim => Aims[aim.Key].Take(aim.Value).Sum(points => (long)points));
    }
}
