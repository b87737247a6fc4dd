namespace WarmupConsole.Music.Rhythm;

/// <summary>A time signature: so many of a note value, 3/4 or 9/8. A beat of the console is a quarter. There is no meaningful default.</summary>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Unit">Of which note value: 4 for quarters, a power of two.</param>
public readonly record struct Meter(int Count, int Unit)
{
    private const int TicksPerWhole = 4 * Beats.TicksPerBeat;
    private const int RoundedUnit = 8;

    private static readonly int[] Units = [4, 8, 16, 32, 64];

    /// <summary>The length of one bar.</summary>
    public Beats Length => new((long)TicksPerWhole * Count / Unit);

    /// <summary>The meter that a length fills, in the largest note value that it is a whole number of; a length that falls between sixty-fourths is rounded up to an eighth.</summary>
    /// <param name="length">More than zero.</param>
    public static Meter For(Beats length)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(length, Beats.Zero);
        int unit = Array.Find(Units, unit => length.Ticks % (TicksPerWhole / unit) == 0);
        int whole = unit == 0 ? RoundedUnit : unit;
        int ticks = TicksPerWhole / whole;
        return new((int)((length.Ticks + ticks - 1) / ticks), whole);
    }

    /// <summary>"3/4".</summary>
    public override string ToString() => $"{Count}/{Unit}";
}
