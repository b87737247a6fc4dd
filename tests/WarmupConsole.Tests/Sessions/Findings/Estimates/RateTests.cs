using System.Globalization;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

public class RateTests
{
    [Fact]
    public void Intervals_agree_with_the_reference_to_nine_digits() => Assert.All(EstimateReference.Rows("jeffreys"), row =>
    {
        double[] counts = [.. row[1].Split('/').Select(count => double.Parse(count, CultureInfo.InvariantCulture))];
        Rate rate = Rate.Of(counts[0], counts[1]);
        Assert.Equal(double.Parse(row[2], CultureInfo.InvariantCulture), rate.Low, 9);
        Assert.Equal(double.Parse(row[3], CultureInfo.InvariantCulture), rate.High, 9);
        Assert.Equal(counts[0] / counts[1], rate.Share);
    });

    [Fact]
    public void Nothing_sung_means_nothing_known()
    {
        Rate rate = Rate.Of(0, 0);
        Assert.Equal((0.0, 1.0), (rate.Low, rate.High));
    }

    [Fact]
    public void More_marks_than_times_sung_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Rate.Of(3, 2));

    [Fact]
    public void Ten_times_the_exposures_narrow_the_interval_to_about_a_third()
    {
        (Rate few, Rate many) = (Rate.Of(12, 36), Rate.Of(120, 360));
        Assert.InRange((many.High - many.Low) / (few.High - few.Low), 0.30, 0.34);
    }
}
