using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Sessions.Findings;

/// <summary>How a pitch at the edge of a range was sung.</summary>
/// <param name="Midi">MIDI number of the pitch.</param>
/// <param name="Rate">Rungs with it that bear a mark of trouble of any kind.</param>
/// <param name="Sessions">Sessions in which it was sung.</param>
public readonly record struct PitchEvidence(int Midi, Rate Rate, int Sessions);
