using System.Globalization;

namespace WarmupConsole.Music.Rhythm;

/// <summary>Lengths in beats, in and out: "2", "0.5", "1/3". More than zero, at most <see cref="MostBeats"/>, exact to the tick.</summary>
public static class BeatsText
{
    /// <summary>The longest length that a text may give one note.</summary>
    public const int MostBeats = 64;

    private const int MostDigits = 9;

    /// <summary>False when the text is no length, is out of range, or falls between two ticks.</summary>
    public static bool TryParse(string text, out Beats beats)
    {
        beats = default;
        if (!TryFraction(text, out long numerator, out long denominator) || numerator * Beats.TicksPerBeat % denominator != 0)
        {
            return false;
        }

        beats = Beats.FromFraction(numerator, denominator);
        return beats > Beats.Zero && beats <= Beats.FromBeats(MostBeats);
    }

    /// <summary>As a whole number or as a fraction in lowest terms: "2", "3/2".</summary>
    public static string Write(Beats beats)
    {
        long divisor = GreatestCommonDivisor(Math.Abs(beats.Ticks), Beats.TicksPerBeat);
        long numerator = beats.Ticks / divisor;
        long denominator = Beats.TicksPerBeat / divisor;
        return denominator == 1
            ? numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{numerator}/{denominator}");
    }

    private static bool TryFraction(string text, out long numerator, out long denominator)
    {
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        int point = text.IndexOf('.', StringComparison.Ordinal);
        denominator = 1;
        if (slash >= 0)
        {
            return TryDigits(text[..slash], out numerator) & TryDigits(text[(slash + 1)..], out denominator) && denominator > 0;
        }

        if (point >= 0)
        {
            denominator = (long)Math.Pow(10, Math.Min(MostDigits, text.Length - point - 1));
            text = text.Remove(point, 1);
        }

        return TryDigits(text, out numerator);
    }

    private static bool TryDigits(string text, out long value)
    {
        value = 0;
        return text.Length <= MostDigits && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
