using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tui.Screens;

/// <summary>A key of the piano that was struck.</summary>
public sealed record PlayedKey(int Midi, Moment At);
