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
        // Parts do not depend on each other: each core takes some, and the order stays that of the choir.
        History[] histories = [.. choir.Parts.AsParallel().AsOrdered().Select(part => History.Of(part, sessions))];
        double threshold = FalseFindings.Threshold(histories.AsParallel().AsOrdered().SelectMany(Questions), Allowance);
        PartFindings[] parts = [.. histories.AsParallel().AsOrdered().Select(history => PartFindings.Of(history, threshold, sessions))];
        return new()
        {
            Findings = [.. parts.SelectMany(part => part.Findings).OrderByDescending(finding => finding.Strength)],
            Ranges = [.. parts.SelectMany(part => part.Ranges)],
            Rates = [.. parts.SelectMany(part => part.Rates)],
            UnknownParts = UnknownIn(sessions, [.. choir.Parts.Select(part => part.Id)]),
            UnattachedMarks = sessions.Sum(session => session.Marks.Count(mark => mark.Candidates.Count == 0)),
        };
    }

    private static IEnumerable<double> Questions(History history) => history.Kinds.Where(kind => !kind.IsPraise)
        .SelectMany(kind => PitchTests.Of(history.Exposures, Exposures.InOrder(kind.Marks.Select(mark => mark.Row)), []).Values);

    /// <summary>Rungs of one line are counted by its list, of which there are few.</summary>
    private static Dictionary<string, int> UnknownIn(IReadOnlyList<SungSession> sessions, HashSet<string> known) => sessions.SelectMany(session => session.Rungs)
        .CountBy(rung => rung.Lines)
        .SelectMany(rungs => rungs.Key.Where(line => !known.Contains(line.Part)).Select(line => (line.Part, rungs.Value)))
        .GroupBy(rungs => rungs.Part).OrderBy(part => part.Key, StringComparer.Ordinal).ToDictionary(part => part.Key, part => part.Sum(rungs => rungs.Value));
}
