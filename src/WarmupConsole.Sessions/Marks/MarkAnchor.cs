using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Marks;

/// <summary>What a mark refers to: taken when its first letter is typed, so that slow typing does not move it.</summary>
/// <param name="Step">Index of the step, from 0.</param>
/// <param name="Rung">Index of the rung in its ladder, from 0; 0 in steps without keys.</param>
/// <param name="Tonic">Tonic of the key that sounded or was announced, or null in steps without keys.</param>
/// <param name="At">When the first letter was typed.</param>
public sealed record MarkAnchor(int Step, int Rung, Pitch? Tonic, Moment At);
