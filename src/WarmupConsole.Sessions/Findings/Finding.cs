using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Sessions.Findings;

/// <summary>What the logs show about one part: a pitch at which one kind of mark comes more often than elsewhere, with its evidence.</summary>
public sealed record Finding
{
    /// <summary>Stable while part, kind and pitch stay the same: "alto-flat-b4".</summary>
    public required string Id { get; init; }

    /// <summary>Id of the part.</summary>
    public required string Part { get; init; }

    /// <summary>Id of the kind of mark; never praise.</summary>
    public required string Kind { get; init; }

    /// <summary>The sounding pitch.</summary>
    public required Pitch Pitch { get; init; }

    /// <summary>
    /// How often the pitch brings such a mark when it is sung. <see cref="Rate.Marked"/> counts the marks that mean a rung with it,
    /// whichever of its pitches was at fault; <see cref="Rate.Share"/> and its interval are the pitch's own.
    /// </summary>
    public required Rate Rate { get; init; }

    /// <summary>Marks of the kind in all rungs of the part without this pitch.</summary>
    public required Rate Elsewhere { get; init; }

    /// <summary>How much better the marks are explained with this pitch than without it: the difference of log-likelihoods, above 0. Findings are ordered by it.</summary>
    public required double Strength { get; init; }

    /// <summary>The probability of marks as crowded as these by chance alone, 0–1.</summary>
    public required double Chance { get; init; }

    /// <summary>When it is worse than otherwise; only where the data support it.</summary>
    public required IReadOnlyList<Circumstance> Circumstances { get; init; }

    /// <summary>How it changes from session to session.</summary>
    public required Trend Trend { get; init; }

    /// <summary>Every session in which the part sang the pitch, oldest first.</summary>
    public required IReadOnlyList<SessionShare> Sessions { get; init; }

    /// <summary>The marks that it rests on, oldest first.</summary>
    public required IReadOnlyList<Evidence> Evidence { get; init; }
}
