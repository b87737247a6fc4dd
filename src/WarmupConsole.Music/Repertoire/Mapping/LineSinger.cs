using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Who sings a line of a score.</summary>
/// <param name="Line">The line.</param>
/// <param name="Singer">The part of the choir, or null when the choir does not sing it.</param>
/// <param name="Ground">What that rests on.</param>
public sealed record LineSinger(ScoreLine Line, Part? Singer, MapGround Ground);
