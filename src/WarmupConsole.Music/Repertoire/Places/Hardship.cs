using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>One hard thing in one bar.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Bar">Index of the bar.</param>
/// <param name="Points">How hard; above 0.</param>
/// <param name="Pitch">The pitch it is about; of a leap where it lands.</param>
/// <param name="Amount">Seconds, semitones or notes a second, as <see cref="HardReasonData.Unit"/> says.</param>
public readonly record struct Hardship(HardReason Reason, int Bar, double Points, Pitch Pitch, double Amount);
