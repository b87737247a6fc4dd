using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>A mark as it concerns one part.</summary>
/// <param name="Mark">As it was made.</param>
/// <param name="Session">Index of the session.</param>
/// <param name="Candidates">Rows of the part that it may mean; most likely first, never empty.</param>
/// <param name="Share">1 when the part was named, else one share among all who sang.</param>
internal sealed record PartMark(HeardMark Mark, int Session, IReadOnlyList<MarkedRow> Candidates, double Share)
{
    /// <summary>The likeliest row.</summary>
    internal int Row => Candidates[0].Row;
}
