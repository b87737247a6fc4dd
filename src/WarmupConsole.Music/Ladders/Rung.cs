using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Ladders;

/// <summary>One repetition of an exercise in one key.</summary>
/// <param name="Tonic">The tonic as written for parts with placement 0, spelled for its key.</param>
/// <param name="Mode">The mode of the key.</param>
/// <param name="Parts">Every part of the choir, in choir order.</param>
public sealed record Rung(Pitch Tonic, Mode Mode, IReadOnlyList<RungPart> Parts);
