namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>A pitch at which the logs show trouble.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Midi">MIDI number of the sounding pitch.</param>
public readonly record struct WeakPitch(string Part, int Midi);
