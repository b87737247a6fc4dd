using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>One note for the piano.</summary>
/// <param name="Midi">MIDI number, 0–127.</param>
/// <param name="Start">When it begins, relative to the start of what it belongs to; negative in a lead-in.</param>
/// <param name="Length">How long it sounds; more than zero.</param>
/// <param name="Velocity">1–127.</param>
public readonly record struct ScoreNote(int Midi, Beats Start, Beats Length, int Velocity);
