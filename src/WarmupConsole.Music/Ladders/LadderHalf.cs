using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>The part of a choir that sings one of two ladders. Tonics are written for parts with placement 0.</summary>
/// <param name="Parts">Who sings it, in the order of their lowest keys.</param>
/// <param name="Lowest">The lowest key that fits all of them.</param>
/// <param name="Highest">The highest key that fits all of them.</param>
/// <param name="Start">Where it would begin.</param>
public sealed record LadderHalf(IReadOnlyList<Part> Parts, Pitch Lowest, Pitch Highest, Pitch Start);
