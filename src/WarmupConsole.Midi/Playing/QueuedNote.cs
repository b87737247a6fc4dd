namespace WarmupConsole.Midi.Playing;

/// <summary>A note that has not begun.</summary>
internal readonly record struct QueuedNote(long Generation, long OnTick, long OffTick, byte Pitch, byte Velocity);
