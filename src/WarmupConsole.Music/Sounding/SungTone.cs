using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Sounding;

/// <summary>A note of a line as it is sung in a key.</summary>
/// <param name="Written">As the pattern has it.</param>
/// <param name="Pitch">What sounds, spelled for the key.</param>
/// <param name="Note">As the piano plays it: shortened by the articulation, as loud as the course of the exercise says.</param>
public readonly record struct SungTone(PatternNote Written, Pitch Pitch, ScoreNote Note);
