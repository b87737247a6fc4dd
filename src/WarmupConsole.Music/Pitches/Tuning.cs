namespace WarmupConsole.Music.Pitches;

/// <summary>Equal temperament on a chosen A4, in hertz, from 380 to 480 (wider than any pitch standard in use). No meaningful default: use <see cref="Iso16"/>.</summary>
public readonly record struct Tuning
{
    private const int MidiOfA4 = 69;
    private const double LowestHertz = 380;
    private const double HighestHertz = 480;

    private Tuning(double a4Hertz) => A4Hertz = a4Hertz;

    /// <summary>A4 = 440 Hz (ISO 16:1975).</summary>
    public static Tuning Iso16 => new(440);

    public double A4Hertz { get; }

    /// <exception cref="ArgumentOutOfRangeException">Outside 380–480 Hz.</exception>
    public static Tuning FromA4Hertz(double hertz)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(hertz, LowestHertz);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hertz, HighestHertz);
        return new(hertz);
    }

    /// <summary>Hertz of a MIDI number.</summary>
    public double FrequencyHertz(int midi) => A4Hertz * Math.Pow(2, (midi - MidiOfA4) / 12.0);
}
