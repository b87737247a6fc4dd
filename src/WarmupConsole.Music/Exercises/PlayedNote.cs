using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>A key of a piano, pressed and let go.</summary>
/// <param name="Midi">Its MIDI number, 0–127.</param>
/// <param name="Start">When it was pressed.</param>
/// <param name="End">When it was let go; after the start.</param>
public readonly record struct PlayedNote(int Midi, Moment Start, Moment End);
