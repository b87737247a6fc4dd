using MathNet.Numerics.Distributions;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>The strata of a <see cref="StratifiedTest"/>, taken in one after another.</summary>
internal sealed class StratifiedSum
{
    /// <summary>Above this many marks the sum is as good as normal.</summary>
    private const int MostExact = 200;

    // Kept one by one only as long as the exact law may be asked for.
    private readonly List<Stratum> strata = [];
    private int seen;
    private int marked;
    private double mean;
    private double variance;

    /// <summary>The probability of at least as many marked exposed rungs as were seen, 0–1; 1 when the strata tell nothing.</summary>
    internal double PValue => marked > MostExact ? Normal() : Exact();

    /// <summary>One stratum more; one that cannot tell anything changes nothing.</summary>
    internal void Add(Stratum stratum)
    {
        if (!stratum.IsTelling)
        {
            return;
        }

        (seen, marked, mean, variance) = (seen + stratum.MarkedExposed, marked + stratum.Marked, mean + stratum.Mean, variance + stratum.Variance);
        if (marked <= MostExact)
        {
            strata.Add(stratum);
        }
    }

    /// <summary>With half a count of correction, because counts are whole.</summary>
    private double Normal() => MathNet.Numerics.Distributions.Normal.CDF(0, 1, (mean + 0.5 - seen) / Math.Sqrt(variance));

    private double Exact()
    {
        double[] sums = [1];
        foreach (Stratum stratum in strata)
        {
            sums = Convolve(sums, Chances(stratum));
        }

        return Math.Min(1, sums.Skip(seen).Sum());
    }

    /// <summary>From no marked exposed rung on; fewer than the unexposed ones leave over cannot be.</summary>
    private static double[] Chances(Stratum stratum)
    {
        int least = Math.Max(0, stratum.Marked + stratum.Exposed - stratum.Size);
        return
        [
            .. Enumerable.Range(0, Math.Min(stratum.Marked, stratum.Exposed) + 1)
                .Select(count => count < least ? 0 : Hypergeometric.PMF(stratum.Size, stratum.Exposed, stratum.Marked, count)),
        ];
    }

    private static double[] Convolve(double[] a, double[] b)
    {
        double[] sums = new double[a.Length + b.Length - 1];
        for (int i = 0; i < a.Length; i++)
        {
            for (int j = 0; j < b.Length; j++)
            {
                sums[i + j] += a[i] * b[j];
            }
        }

        return sums;
    }
}
