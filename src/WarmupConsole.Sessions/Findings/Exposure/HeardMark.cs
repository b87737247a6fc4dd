namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>A mark with a kind, and the rungs that it may mean.</summary>
/// <param name="Id">Its number in the session.</param>
/// <param name="Kind">Id of the kind.</param>
/// <param name="IsPraise">True when nothing needs work.</param>
/// <param name="Parts">Ids of the parts named; empty when none was, and then everyone who sang may be meant.</param>
/// <param name="Candidates">Most likely first; empty when nothing that was sung can be meant.</param>
/// <param name="Pitch">MIDI number named, or null.</param>
/// <param name="Place">Place in words, or empty.</param>
/// <param name="Raw">What was typed.</param>
public sealed record HeardMark(
    int Id,
    string Kind,
    bool IsPraise,
    IReadOnlyList<string> Parts,
    IReadOnlyList<RungWeight> Candidates,
    int? Pitch,
    string Place,
    string Raw)
{
    /// <summary>True when only one rung can be meant: a key was named, the mark was moved, or nothing else was near.</summary>
    public bool IsCertain => Candidates.Count == 1;
}
