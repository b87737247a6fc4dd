namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Repeats a round until it moves nothing any more. Rounds of expectation and maximisation go the same way again and again in ever smaller steps; so after every
/// two of them a leap goes where they lead (squared extrapolation: Varadhan and Roland, 2008), and the rounds after it set right what it got wrong.
/// </summary>
public static class FixedPoint
{
    private const int MostRounds = 200;
    private const double Settled = 1e-6;
    private const double LongestLeap = 50;

    /// <summary>After 200 rounds it stops where it is.</summary>
    /// <param name="values">Where to begin; afterwards, where it settled.</param>
    /// <param name="range">What no value may leave.</param>
    /// <param name="round">Moves the values once; returns the largest move.</param>
    public static void Find(double[] values, (double Least, double Most) range, Func<double> round)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(round);
        double[] first = new double[values.Length];
        double[] second = new double[values.Length];
        for (int rounds = 0; rounds < MostRounds; rounds += 2)
        {
            values.CopyTo(first, 0);
            if (round() <= Settled)
            {
                return;
            }

            values.CopyTo(second, 0);
            if (round() <= Settled)
            {
                return;
            }

            Leap(first, second, values, range);
        }

        round();
    }

    /// <param name="first">Before two rounds.</param>
    /// <param name="second">After one.</param>
    /// <param name="values">After both; then where the leap lands.</param>
    /// <param name="range">What no value may leave.</param>
    private static void Leap(double[] first, double[] second, double[] values, (double Least, double Most) range)
    {
        (double step, double turn) = (0, 0);
        for (int i = 0; i < values.Length; i++)
        {
            step += Square(second[i] - first[i]);
            turn += Square(values[i] - second[i] - (second[i] - first[i]));
        }

        double length = Math.Clamp(Math.Sqrt(step / turn), 1, LongestLeap);
        for (int i = 0; i < values.Length; i++)
        {
            double move = second[i] - first[i];
            double bend = values[i] - second[i] - move;
            values[i] = Math.Clamp(first[i] + (2 * length * move) + (length * length * bend), range.Least, range.Most);
        }
    }

    private static double Square(double value) => value * value;
}
