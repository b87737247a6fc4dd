using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Exercises;

/// <summary>One note or rest of a pattern.</summary>
/// <param name="Degree">The scale degree, or null for a rest.</param>
/// <param name="Length">How long; more than zero.</param>
/// <param name="Syllable">What is sung on it, or null where the one before is carried on (or on a rest).</param>
public sealed record PatternNote(Degree? Degree, Beats Length, Syllable? Syllable);
