using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Writing;

/// <summary>Something at a beat of a piece.</summary>
/// <param name="At">From the beginning of the piece.</param>
/// <param name="Value">What is there.</param>
public readonly record struct Placed<T>(Beats At, T Value);
