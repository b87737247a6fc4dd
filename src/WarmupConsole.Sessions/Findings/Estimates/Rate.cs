using MathNet.Numerics.Distributions;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>How often something was marked, of all the times it could have been, with the interval that holds the true share nine times in ten.</summary>
/// <param name="Marked">Times it was marked; a fraction where marks are shared between rungs.</param>
/// <param name="Exposed">Times it was sung.</param>
/// <param name="Share">The estimate, 0–1.</param>
/// <param name="Low">Lower end, 0–1.</param>
/// <param name="High">Upper end, 0–1.</param>
public readonly record struct Rate(double Marked, double Exposed, double Share, double Low, double High)
{
    /// <summary>Half of what lies outside the interval.</summary>
    private const double Tail = 0.05;

    /// <summary>The equal-tailed interval of Jeffreys (a Beta prior of one half and one half), closed at an end where nothing or everything was marked.</summary>
    /// <param name="marked">From 0 to <paramref name="exposed"/>.</param>
    /// <param name="exposed">0 or more; with 0 nothing is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">Marked lies outside 0 and exposed.</exception>
    public static Rate Of(double marked, double exposed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(marked);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(marked, exposed);
        return Weighted(marked, exposed, exposed > 0 ? marked / exposed : 0, exposed);
    }

    /// <summary>A share that is known as well as if it had been seen so many times.</summary>
    /// <param name="marked">Times it was marked.</param>
    /// <param name="exposed">Times it was sung.</param>
    /// <param name="share">The estimate, 0–1.</param>
    /// <param name="worth">How many plain exposures tell as much.</param>
    internal static Rate Weighted(double marked, double exposed, double share, double worth)
    {
        (double hits, double misses) = (share * worth, (1 - share) * worth);
        double low = hits <= 0 ? 0 : Beta.InvCDF(hits + 0.5, misses + 0.5, Tail);
        double high = misses <= 0 ? 1 : Beta.InvCDF(hits + 0.5, misses + 0.5, 1 - Tail);
        return new(marked, exposed, share, low, high);
    }
}
