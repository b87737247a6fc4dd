using System.Globalization;

namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// A length or a position in musical time, counted in whole ticks of 1/960 beat.
/// 960 = 2⁶·3·5, so halves down to 64ths, triplets and quintuplets are exact. Positions before a
/// starting beat are negative (count-ins). The default is zero; ordering is by time.
/// </summary>
public readonly record struct Beats(long Ticks) : IComparable<Beats>
{
    /// <summary>Ticks in one beat; also the division written into Standard MIDI Files.</summary>
    public const int TicksPerBeat = 960;

    /// <summary>No time at all.</summary>
    public static Beats Zero => default;

    /// <summary>Whole beats.</summary>
    public static Beats FromBeats(long beats) => new(beats * TicksPerBeat);

    /// <summary>A fraction of a beat, such as 1/3 for a triplet; exact when 960 divides by the denominator.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fraction does not fall on a tick.</exception>
    public static Beats FromFraction(long numerator, long denominator)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(denominator);
        long ticks = numerator * TicksPerBeat;
        if (ticks % denominator != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, $"{numerator}/{denominator} of a beat is no whole number of 1/{TicksPerBeat} beats.");
        }

        return new(ticks / denominator);
    }

    /// <summary>The number of beats, for showing; exact arithmetic stays in ticks.</summary>
    public double ToDouble() => (double)Ticks / TicksPerBeat;

    public int CompareTo(Beats other) => Ticks.CompareTo(other.Ticks);

    public static Beats operator +(Beats a, Beats b) => new(a.Ticks + b.Ticks);

    public static Beats operator -(Beats a, Beats b) => new(a.Ticks - b.Ticks);

    public static Beats operator -(Beats a) => new(-a.Ticks);

    public static Beats operator *(Beats a, long times) => new(a.Ticks * times);

    public static bool operator <(Beats a, Beats b) => a.Ticks < b.Ticks;

    public static bool operator >(Beats a, Beats b) => a.Ticks > b.Ticks;

    public static bool operator <=(Beats a, Beats b) => a.Ticks <= b.Ticks;

    public static bool operator >=(Beats a, Beats b) => a.Ticks >= b.Ticks;

    public override string ToString() => ToDouble().ToString("0.###", CultureInfo.InvariantCulture);
}
