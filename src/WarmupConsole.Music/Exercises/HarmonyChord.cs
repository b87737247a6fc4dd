using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Exercises;

/// <summary>One chord of the accompaniment: a Roman numeral ("I", "V7", "ii") and its length.</summary>
public sealed record HarmonyChord(string Numeral, Beats Length);
