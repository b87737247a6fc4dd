namespace WarmupConsole.Music.Pitches;

/// <summary>The seven letter names, upwards from C, where the octave number changes.</summary>
public enum Step
{
    C,
    D,
    E,
    F,
    G,
    A,
    B,
}
