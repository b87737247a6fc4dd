using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>A chord of the accompaniment, laid under the hands.</summary>
/// <param name="Grip">The keys.</param>
/// <param name="Start">When it begins, from the first beat of the rung.</param>
/// <param name="Length">How long it holds.</param>
public readonly record struct VoicedChord(Grip Grip, Beats Start, Beats Length);
