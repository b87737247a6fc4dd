using System.Globalization;

namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// A speed in beats a minute, kept as whole thousandths so that two tempos are equal or not, never nearly.
/// From 20 to 300: below, a beat is longer than a breath phase; above, no warm-up is sung.
/// There is no meaningful default: <c>default(Tempo)</c> is not a tempo.
/// </summary>
public readonly record struct Tempo : IComparable<Tempo>
{
    /// <summary>The slowest tempo there is.</summary>
    public const int SlowestBeatsPerMinute = 20;

    /// <summary>The quickest tempo there is.</summary>
    public const int FastestBeatsPerMinute = 300;

    private const long NanosecondsPerMinute = 60_000_000_000;

    private Tempo(int milliBeatsPerMinute) => MilliBeatsPerMinute = milliBeatsPerMinute;

    /// <summary>Thousandths of a beat a minute: 88 bpm is 88,000.</summary>
    public int MilliBeatsPerMinute { get; }

    /// <summary>Beats a minute, for showing.</summary>
    public double BeatsPerMinute => MilliBeatsPerMinute / 1000.0;

    /// <summary>Microseconds of one beat as a Standard MIDI File states it, rounded to the nearest.</summary>
    public int MicrosecondsPerBeat => (int)Math.Round(60_000_000_000.0 / MilliBeatsPerMinute, MidpointRounding.AwayFromZero);

    /// <exception cref="ArgumentOutOfRangeException">Outside 20–300.</exception>
    public static Tempo FromBeatsPerMinute(int beatsPerMinute) => FromMilliBeatsPerMinute(checked(beatsPerMinute * 1000));

    /// <exception cref="ArgumentOutOfRangeException">Outside 20,000–300,000.</exception>
    public static Tempo FromMilliBeatsPerMinute(int milliBeatsPerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(milliBeatsPerMinute, SlowestBeatsPerMinute * 1000);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(milliBeatsPerMinute, FastestBeatsPerMinute * 1000);
        return new(milliBeatsPerMinute);
    }

    /// <summary>The nearest tempo that is allowed: a live "faster" at the end of the scale stays there.</summary>
    public static Tempo Clamp(int milliBeatsPerMinute) =>
        new(Math.Clamp(milliBeatsPerMinute, SlowestBeatsPerMinute * 1000, FastestBeatsPerMinute * 1000));

    /// <summary>How long the beats last, in nanoseconds, rounded up, so that the last of them has wholly passed.</summary>
    public long NanosecondsOf(Beats beats)
    {
        Int128 numerator = (Int128)beats.Ticks * NanosecondsPerMinute * 1000;
        Int128 denominator = (Int128)MilliBeatsPerMinute * Beats.TicksPerBeat;
        return (long)-FloorDivide(-numerator, denominator);
    }

    /// <summary>How many beats, rounded down to a tick, have wholly passed in that many nanoseconds.</summary>
    public Beats BeatsIn(long nanoseconds)
    {
        Int128 numerator = (Int128)nanoseconds * MilliBeatsPerMinute * Beats.TicksPerBeat;
        return new((long)FloorDivide(numerator, (Int128)NanosecondsPerMinute * 1000));
    }

    /// <summary>How long the beats last.</summary>
    public TimeSpan DurationOf(Beats beats) => new(NanosecondsOf(beats) / TimeSpan.NanosecondsPerTick);

    public int CompareTo(Tempo other) => MilliBeatsPerMinute.CompareTo(other.MilliBeatsPerMinute);

    public static bool operator <(Tempo a, Tempo b) => a.CompareTo(b) < 0;

    public static bool operator >(Tempo a, Tempo b) => a.CompareTo(b) > 0;

    public static bool operator <=(Tempo a, Tempo b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Tempo a, Tempo b) => a.CompareTo(b) >= 0;

    public override string ToString() => BeatsPerMinute.ToString("0.###", CultureInfo.InvariantCulture) + " bpm";

    private static Int128 FloorDivide(Int128 numerator, Int128 denominator)
    {
        (Int128 quotient, Int128 remainder) = Int128.DivRem(numerator, denominator);
        return remainder < 0 ? quotient - 1 : quotient;
    }
}
