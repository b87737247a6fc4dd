using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>The tempo an exercise is usually led at, and the slowest and quickest at which it still serves.</summary>
public sealed record TempoRange(Tempo Default, Tempo Slowest, Tempo Quickest);
