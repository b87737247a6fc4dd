using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>Bars of a score as something to sing through keys: it starts easier, lower (or higher where they are low) and slower, and arrives at what is written.</summary>
/// <param name="Pattern">The line in degrees of its key.</param>
/// <param name="Mode">The mode of the key.</param>
/// <param name="Tonic">The tonic of the score, as written for parts with placement 0.</param>
/// <param name="Keys">The ladder; its last key is the score's where <paramref name="Arrives"/>.</param>
/// <param name="Slow">The tempo of the first key.</param>
/// <param name="Tempo">The tempo of the score, met in the last key.</param>
/// <param name="Dynamics">Loudness words.</param>
/// <param name="Arrives">False when the part cannot sing these bars at their own pitch at all, so that the ladder ends before.</param>
public sealed record Drill(Pattern Pattern, Mode Mode, Pitch Tonic, LadderSpec Keys, Tempo Slow, Tempo Tempo, IReadOnlyList<string> Dynamics, bool Arrives);
