using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Ports;

/// <summary>A message and when it was sent.</summary>
public readonly record struct TimedMessage(Moment At, ReadOnlyMemory<byte> Bytes);
