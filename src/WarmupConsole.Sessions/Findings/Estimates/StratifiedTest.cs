using MathNet.Numerics.Distributions;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Could the marks have fallen like this by chance? Within each stratum the marks are dealt out over its rungs; the sum over all strata of
/// those that fall on exposed rungs is compared with what was seen (the exact conditional test for 2 × 2 × K tables, one-sided). So evenings,
/// exercises and moods of marking may differ as they like.
/// </summary>
public static class StratifiedTest
{
    /// <summary>Above this many marks the sum is as good as normal.</summary>
    private const int MostExact = 200;

    /// <summary>The probability of at least as many marked exposed rungs as were seen, 0–1; 1 when the strata tell nothing.</summary>
    public static double PValue(IEnumerable<Stratum> strata)
    {
        Stratum[] telling = [.. strata.Where(stratum => stratum.IsTelling)];
        int seen = telling.Sum(stratum => stratum.MarkedExposed);
        return telling.Sum(stratum => stratum.Marked) > MostExact ? Normal(telling, seen) : Exact(telling, seen);
    }

    /// <summary>With half a count of correction, because counts are whole.</summary>
    private static double Normal(Stratum[] strata, int seen)
    {
        double deviation = Math.Sqrt(strata.Sum(stratum => stratum.Variance));
        return MathNet.Numerics.Distributions.Normal.CDF(0, 1, (strata.Sum(stratum => stratum.Mean) + 0.5 - seen) / deviation);
    }

    private static double Exact(Stratum[] strata, int seen)
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
