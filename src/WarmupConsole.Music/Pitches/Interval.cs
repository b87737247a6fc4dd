namespace WarmupConsole.Music.Pitches;

/// <summary>
/// A distance between two spelled pitches: how many letter names (<see cref="Steps"/>, 0 for a unison, 2 for a third,
/// negative downwards) and how many semitones. A minor second is (1, 1), an augmented unison (0, 1).
/// </summary>
public readonly record struct Interval(int Steps, int Semitones)
{
    /// <summary>No distance.</summary>
    public static Interval Unison => default;

    /// <summary>The diatonic half-step, one letter name up.</summary>
    public static Interval MinorSecond => new(1, 1);

    /// <summary>Seven semitones, four letter names up.</summary>
    public static Interval PerfectFifth => new(4, 7);

    /// <summary>Twelve semitones, seven letter names up.</summary>
    public static Interval Octave => new(7, 12);

    public static Interval operator -(Interval interval) => new(-interval.Steps, -interval.Semitones);

    public static Interval operator +(Interval a, Interval b) => new(a.Steps + b.Steps, a.Semitones + b.Semitones);

    /// <summary>From one pitch to another.</summary>
    public static Interval Between(Pitch from, Pitch to) => new(to.DiatonicNumber - from.DiatonicNumber, to.Midi - from.Midi);
}
