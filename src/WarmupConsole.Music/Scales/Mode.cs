namespace WarmupConsole.Music.Scales;

/// <summary>The seven-note scale that degree numbers refer to.</summary>
public enum Mode
{
    Major,
    Minor,
    HarmonicMinor,
    MelodicMinor,
    Dorian,
    Phrygian,
    Lydian,
    Mixolydian,
}
