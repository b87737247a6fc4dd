using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

public class FixedPointTests
{
    private static readonly (double Least, double Most) Share = (0, 1);

    [Fact]
    public void A_slow_round_settles_where_plain_rounds_would_not_have_come_yet()
    {
        double[] values = [0, 0.9];
        FixedPoint.Find(values, Share, () => Move(values, [(0.5 + (99 * values[0])) / 100, (0.3 + (19 * values[1])) / 20]));
        Assert.Equal(0.5, values[0], 2e-4);
        Assert.Equal(0.3, values[1], 2e-4);
    }

    [Fact]
    public void A_value_that_keeps_going_stops_at_the_end_of_its_range()
    {
        double[] values = [0.2];
        FixedPoint.Find(values, Share, () => Move(values, [Math.Min(1, values[0] + 0.0001)]));
        Assert.Equal(1, values[0]);
    }

    [Fact]
    public void Rounds_that_never_settle_come_to_an_end()
    {
        double[] values = [0.2];
        int rounds = 0;
        FixedPoint.Find(values, Share, () => Move(values, [rounds++ % 2 == 0 ? 0.9 : 0.1]));
        Assert.InRange(rounds, 100, 300);
        Assert.InRange(values[0], 0, 1);
    }

    private static double Move(double[] values, double[] next)
    {
        double most = values.Zip(next, (value, other) => Math.Abs(value - other)).Max();
        next.CopyTo(values, 0);
        return most;
    }
}
