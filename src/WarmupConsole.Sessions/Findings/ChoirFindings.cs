using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings.Estimates;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings;

/// <summary>What a choir's session logs show: findings, strongest first. docs/findings.md tells how, and where the limits are.</summary>
public sealed record ChoirFindings
{
    /// <summary>Of all questions asked of the pitches together, this is the chance of a first wrong answer when nothing is weak.</summary>
    private const double Allowance = 0.03;

    /// <summary>Strongest evidence first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Evidence that comfortable limits should move, in the order of the parts.</summary>
    public required IReadOnlyList<RangeAdvice> Ranges { get; init; }

    /// <summary>How often each part was marked, by kind and by whatever can be counted; the basis of every comparison, not yet one.</summary>
    public required IReadOnlyList<RateRow> Rates { get; init; }

    /// <summary>Parts that the logs know and the choir does not, with the number of rungs they sang: renamed or gone.</summary>
    public required IReadOnlyDictionary<string, int> UnknownParts { get; init; }

    /// <summary>Marks with a kind that no sung rung can be meant by.</summary>
    public required int UnattachedMarks { get; init; }

    /// <summary>Looks for findings in all sessions together.</summary>
    /// <param name="sessions">Oldest first; folded with one <see cref="LineBook"/>.</param>
    /// <param name="choir">The choir as it is now: only its parts are looked at.</param>
    public static ChoirFindings From(IReadOnlyList<SungSession> sessions, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        ArgumentNullException.ThrowIfNull(choir);
        History[] histories = [.. choir.Parts.Select(part => History.Of(part.Id, sessions))];
        double threshold = FalseFindings.Threshold(histories.SelectMany(Questions), Allowance);
        return new()
        {
            Findings = threshold < 0 ? [] : [.. choir.Parts.Zip(histories).SelectMany(pair => Of(pair.First, pair.Second, threshold, sessions)).OrderByDescending(finding => finding.Strength)],
            Ranges = [.. choir.Parts.Zip(histories).SelectMany(pair => new RangeAdvices(pair.First, pair.Second).All())],
            Rates = [.. choir.Parts.Zip(histories).SelectMany(pair => RateTable.Of(pair.First, pair.Second))],
            UnknownParts = sessions.SelectMany(session => session.Rungs).SelectMany(rung => rung.Lines).Select(line => line.Part)
                .Where(id => !IsKnown(choir.Parts, id)).CountBy(id => id).OrderBy(part => part.Key, StringComparer.Ordinal).ToDictionary(),
            UnattachedMarks = sessions.Sum(session => session.Marks.Count(mark => mark.Candidates.Count == 0)),
        };
    }

    private static IEnumerable<double> Questions(History history) => history.Kinds.Where(kind => !kind.IsPraise)
        .SelectMany(kind => PitchTests.Of(history.Exposures.Rows, kind.Marks.Select(mark => mark.Row).ToHashSet(), []).Values);

    private static IEnumerable<Finding> Of(Part part, History history, double threshold, IReadOnlyList<SungSession> sessions)
    {
        AspectOf values = new(part.Range.Comfortable, history.Exposures.Rows.Select(row => row.Rung.Minute).DefaultIfEmpty().Max());
        return history.Kinds.Where(kind => !kind.IsPraise).SelectMany(kind =>
            new FindingOf(history.Exposures, values, kind.Kind, kind.Marks, sessions).All(new WeakPitches(history.Exposures, kind.Marks, threshold).Find()));
    }

    private static bool IsKnown(IReadOnlyList<Part> parts, string id) => parts.Any(part => part.Id == id);
}
