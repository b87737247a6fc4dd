namespace WarmupConsole.Music.Sounding;

/// <summary>The piano's compass, and putting notes into its registers.</summary>
public static class Keyboard
{
    /// <summary>A0.</summary>
    public const int LowestMidi = 21;

    /// <summary>C8.</summary>
    public const int HighestMidi = 108;

    private const int Octave = 12;

    /// <summary>The same note name at or just above a floor.</summary>
    internal static int AtOrAbove(int midi, int floor) => floor + Mod(midi - floor);

    /// <summary>The same note name at or just below a ceiling.</summary>
    internal static int AtOrBelow(int midi, int ceiling) => ceiling - Mod(ceiling - midi);

    /// <summary>The note itself, or its nearest octave on the piano.</summary>
    internal static int OnPiano(int midi) =>
        midi < LowestMidi ? AtOrAbove(midi, LowestMidi) : midi > HighestMidi ? AtOrBelow(midi, HighestMidi) : midi;

    private static int Mod(int semitones) => ((semitones % Octave) + Octave) % Octave;
}
