using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Sessions.Findings;

/// <summary>One cell of the count: rungs of a part that have something in common, and the marks of one kind in them.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Kind">Id of the kind.</param>
/// <param name="Aspect">What they have in common.</param>
/// <param name="Value">Its value: a MIDI number, a vowel, a loudness word, "short", "high", "first third".</param>
/// <param name="Rate">Marks that may mean these rungs, each by its weight, of all these rungs.</param>
public sealed record RateRow(string Part, string Kind, Aspect Aspect, string Value, Rate Rate);
