using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Sessions.Findings;

/// <summary>A circumstance in which a pitch is marked more often than in the others.</summary>
/// <param name="Aspect">What differs.</param>
/// <param name="Value">Its value there: a vowel, a loudness word, "short", "long", "first third".</param>
/// <param name="There">Rungs with the pitch in that circumstance.</param>
/// <param name="Otherwise">Rungs with the pitch in all others.</param>
/// <param name="Chance">The probability of such a difference by chance, 0–1.</param>
public sealed record Circumstance(Aspect Aspect, string Value, Rate There, Rate Otherwise, double Chance);
