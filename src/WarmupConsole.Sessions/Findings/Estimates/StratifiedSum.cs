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
        double[] sums = new double[marked + 1];
        sums[0] = 1;
        int most = 0;
        foreach (Stratum stratum in strata)
        {
            double[] chances = Chances(stratum);
            Convolve(sums, most, chances);
            most += chances.Length - 1;
        }

        return Math.Min(1, sums[seen..].Sum());
    }

    /// <summary>
    /// The hypergeometric law, from no marked exposed rung on; fewer than the unexposed ones leave over cannot be. Each chance follows from its neighbour, beginning at
    /// the likeliest: so nothing is too large or too small for a number.
    /// </summary>
    private static double[] Chances(Stratum stratum)
    {
        (int size, int exposed, int dealt, _) = stratum;
        (int least, int most) = (Math.Max(0, dealt + exposed - size), Math.Min(dealt, exposed));
        double Step(int count) => (double)(dealt - count) * (exposed - count) / ((count + 1.0) * (size - dealt - exposed + count + 1));
        double[] chances = new double[most + 1];
        int likeliest = Math.Clamp((int)((dealt + 1L) * (exposed + 1L) / (size + 2L)), least, most);
        double sum = chances[likeliest] = 1;
        for (int count = likeliest; count < most; count++)
        {
            sum += chances[count + 1] = chances[count] * Step(count);
        }

        for (int count = likeliest - 1; count >= least; count--)
        {
            sum += chances[count] = chances[count + 1] / Step(count);
        }

        for (int count = least; count <= most; count++)
        {
            chances[count] /= sum;
        }

        return chances;
    }

    /// <summary>In place, from the largest sum down: what is still to be read has not been written to.</summary>
    private static void Convolve(double[] sums, int most, double[] chances)
    {
        for (int sum = most; sum >= 0; sum--)
        {
            double before = sums[sum];
            sums[sum] = before * chances[0];
            for (int count = 1; count < chances.Length; count++)
            {
                sums[sum + count] += before * chances[count];
            }
        }
    }
}
