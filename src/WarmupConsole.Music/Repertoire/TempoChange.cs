using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire;

/// <summary>A tempo from a place on.</summary>
/// <param name="Bar">Index of the bar from 0.</param>
/// <param name="Offset">From the beginning of the bar.</param>
/// <param name="Tempo">In quarter notes, whatever the beat of the bar is.</param>
public sealed record TempoChange(int Bar, Beats Offset, Tempo Tempo);
