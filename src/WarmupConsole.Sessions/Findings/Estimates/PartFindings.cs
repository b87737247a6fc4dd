using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>What the history of one part shows.</summary>
internal sealed record PartFindings(IReadOnlyList<Finding> Findings, IReadOnlyList<RangeAdvice> Ranges, IReadOnlyList<RateRow> Rates)
{
    /// <param name="history">Of the part.</param>
    /// <param name="threshold">What a p-value may be at most; below 0 when none is believed.</param>
    /// <param name="sessions">Oldest first.</param>
    internal static PartFindings Of(History history, double threshold, IReadOnlyList<SungSession> sessions)
    {
        Situations situations = new(history.Exposures, new AspectOf(history.Part.Range.Comfortable, history.Exposures.Longest));
        // Kinds do not depend on each other either: most marks are often of one kind of one part, and it should not keep the others waiting.
        IEnumerable<Finding> findings = threshold < 0 ? [] : history.Kinds.Where(kind => !kind.IsPraise).AsParallel().AsOrdered()
            .SelectMany(kind => OfKind((kind.Kind, kind.Marks), situations, threshold, sessions));
        return new([.. findings], [.. new RangeAdvices(history.Part, history).All()], [.. RateTable.Of(history, situations)]);
    }

    private static IEnumerable<Finding> OfKind((string Kind, IReadOnlyList<PartMark> Marks) kind, Situations situations, double threshold, IReadOnlyList<SungSession> sessions)
    {
        MarkGroups marks = new(situations.Exposures, kind.Marks);
        (IReadOnlyList<(int Pitch, double Chance)> weak, NoisyOr fit) = new WeakPitches(situations.Exposures, marks, threshold).Find();
        return new FindingOf(situations, kind.Kind, marks, fit, sessions).All(weak);
    }
}
