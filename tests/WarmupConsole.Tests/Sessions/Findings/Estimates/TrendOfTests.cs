using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

public class TrendOfTests
{
    [Theory]
    [InlineData("9 9 8 3 2 1", TrendDirection.Better)]
    [InlineData("1 2 1 8 9 8", TrendDirection.Worse)]
    [InlineData("5 5", TrendDirection.TooEarly)]
    [InlineData("6 5 5 4 5 4", TrendDirection.TooEarly)]
    public void The_later_half_is_compared_with_the_earlier(string blamed, TrendDirection expected) =>
        Assert.Equal(expected, TrendOf.Of(Sessions(blamed, 20)).Direction);

    [Fact]
    public void Enough_exposures_without_a_difference_are_the_same() =>
        Assert.Equal(TrendDirection.Same, TrendOf.Of(Sessions("50 51 49 50 50 51", 200)).Direction);

    /// <summary>Two equal posteriors: it has fallen or risen, each with one half.</summary>
    [Fact]
    public void Equal_halves_have_fallen_with_a_chance_of_one_half() =>
        Assert.Equal(0.5, TrendOf.Of(Sessions("5 5 5 5", 20)).FallChance, 3);

    private static SessionShare[] Sessions(string blamed, int exposed) =>
    [
        .. blamed.Split(' ').Select((count, week) => new SessionShare(
            $"evening-{week}", new DateTimeOffset(2027, 1, 12, 19, 30, 0, TimeSpan.Zero).AddDays(7 * week), double.Parse(count, System.Globalization.CultureInfo.InvariantCulture), exposed)),
    ];
}
