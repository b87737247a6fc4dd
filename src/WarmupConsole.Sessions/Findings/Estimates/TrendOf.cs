using MathNet.Numerics.Distributions;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Compares the earlier half of the exposures with the later half, session by session, by the two Beta posteriors.</summary>
public static class TrendOf
{
    /// <summary>Fewer sessions say nothing about weeks.</summary>
    private const int LeastSessions = 4;

    /// <summary>Fewer exposures in one half say nothing about a share.</summary>
    private const int LeastExposed = 8;

    private const double Sure = 0.95;

    /// <summary>A difference of a tenth of all times is one that a director would hear.</summary>
    private const double Matters = 0.10;

    /// <summary>Standard deviations to each side that are summed, and in how many slices.</summary>
    private const int Reach = 6;
    private const int Slices = 200;

    /// <param name="sessions">Oldest first.</param>
    public static Trend Of(IReadOnlyList<SessionShare> sessions)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        int half = Half(sessions);
        (Rate earlier, Rate later) = (Sum(sessions.Take(half)), Sum(sessions.Skip(half)));
        double fall = FallChance(earlier, later, 0);
        bool isEnough = sessions.Count >= LeastSessions && earlier.Exposed >= LeastExposed && later.Exposed >= LeastExposed;
        return new(isEnough ? Direction(fall, earlier, later) : TrendDirection.TooEarly, earlier, later, fall);
    }

    private static TrendDirection Direction(double fall, Rate earlier, Rate later) => fall switch
    {
        >= Sure => TrendDirection.Better,
        <= 1 - Sure => TrendDirection.Worse,
        _ when FallChance(earlier, later, Matters) <= 1 - Sure && FallChance(earlier, later, -Matters) >= Sure => TrendDirection.Same,
        _ => TrendDirection.TooEarly,
    };

    /// <summary>Where the sessions are divided so that both sides have sung it about equally often.</summary>
    private static int Half(IReadOnlyList<SessionShare> sessions)
    {
        int sum = sessions.Sum(session => session.Exposed);
        (int half, int before) = (0, 0);
        while (half < sessions.Count && 2 * (before + (sessions[half].Exposed / 2)) < sum)
        {
            before += sessions[half].Exposed;
            half++;
        }

        return half;
    }

    private static Rate Sum(IEnumerable<SessionShare> sessions)
    {
        double exposed = sessions.Sum(session => session.Exposed);
        return Rate.Of(Math.Min(exposed, sessions.Sum(session => session.Blamed)), exposed);
    }

    /// <summary>The probability that the share has fallen by more than a margin, summed over slices of the earlier posterior.</summary>
    private static double FallChance(Rate earlier, Rate later, double margin)
    {
        Beta before = new(earlier.Marked + 0.5, earlier.Exposed - earlier.Marked + 0.5);
        (double a, double b) = (later.Marked + 0.5, later.Exposed - later.Marked + 0.5);
        double from = Math.Max(0, before.Mean - (Reach * before.StdDev));
        double slice = (Math.Min(1, before.Mean + (Reach * before.StdDev)) - from) / Slices;
        (double weight, double sum) = (0, 0);
        for (int i = 0; i < Slices; i++)
        {
            double share = from + ((i + 0.5) * slice);
            double density = before.Density(share);
            weight += density;
            sum += density * (share <= margin ? 0 : share - margin >= 1 ? 1 : Beta.CDF(a, b, share - margin));
        }

        return sum / weight;
    }
}
