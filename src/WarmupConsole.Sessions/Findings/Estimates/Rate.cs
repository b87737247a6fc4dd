using MathNet.Numerics.Distributions;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// How often something was marked, of all the times it could have been, with the interval that holds the true share nine times in ten: that of Jeffreys
/// (a Beta prior of one half and one half), equal-tailed, closed at an end where nothing or everything was marked.
/// </summary>
/// <param name="Marked">Times it was marked; a fraction where marks are shared between rungs.</param>
/// <param name="Exposed">Times it was sung.</param>
/// <param name="Share">The estimate, 0–1.</param>
/// <param name="Worth">How many plain exposures tell as much about the share.</param>
public readonly record struct Rate(double Marked, double Exposed, double Share, double Worth)
{
    /// <summary>Half of what lies outside the interval.</summary>
    private const double Tail = 0.05;

    // Ends are worked out when they are asked for: of thousands of counts hardly any is ever looked at.

    /// <summary>Lower end, 0–1.</summary>
    public double Low => Share * Worth <= 0 ? 0 : End(Tail);

    /// <summary>Upper end, 0–1.</summary>
    public double High => (1 - Share) * Worth <= 0 ? 1 : End(1 - Tail);

    /// <summary>Plain counts.</summary>
    /// <param name="marked">From 0 to <paramref name="exposed"/>.</param>
    /// <param name="exposed">0 or more; with 0 nothing is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">Marked lies outside 0 and exposed.</exception>
    public static Rate Of(double marked, double exposed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(marked);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(marked, exposed);
        return new(marked, exposed, exposed > 0 ? marked / exposed : 0, exposed);
    }

    private double End(double tail) => Beta.InvCDF((Share * Worth) + 0.5, ((1 - Share) * Worth) + 0.5, tail);
}
