using System.Globalization;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>
/// Hidden weaknesses are found again. WARMUP_SEASONS says how many seasons of each kind are simulated; docs/findings.md holds the
/// table of 500.
/// </summary>
public class RecoveryTests
{
    private const int Usual = 30;

    private static int Seasons => int.TryParse(Environment.GetEnvironmentVariable("WARMUP_SEASONS"), NumberStyles.None, CultureInfo.InvariantCulture, out int seasons) ? seasons : Usual;

    [Fact]
    public void A_pitch_marked_at_four_times_in_ten_is_found()
    {
        RecoveryFigures one = RecoveryFigures.Of(Seasons, i => new SeasonSpec(1000 + i, 6, 1, 0.40));
        RecoveryFigures two = RecoveryFigures.Of(Seasons, i => new SeasonSpec(5000 + i, 6, 2, 0.40));
        TestContext.Current.TestOutputHelper?.WriteLine(one.Row("one weak pitch at 40 %, 6 sessions") + "\n" + two.Row("two weak pitches at 40 %, 6 sessions"));
        Assert.True(one.TopHits >= 0.9 * one.Seasons && two.TopHits >= 0.9 * two.Seasons, $"{one}\n{two}");
    }

    [Fact]
    public void A_pitch_at_two_times_in_ten_is_reported_as_it_is()
    {
        RecoveryFigures six = RecoveryFigures.Of(Seasons, i => new SeasonSpec(10_000 + i, 6, 1, 0.20));
        TestContext.Current.TestOutputHelper?.WriteLine(six.Row("one weak pitch at 20 %, 6 sessions"));
        Assert.True(six.TopHits > six.Seasons / 4, $"{six}");
    }

    [Fact]
    public void Without_a_weakness_hardly_a_season_has_any_finding()
    {
        RecoveryFigures six = RecoveryFigures.Of(Seasons, i => new SeasonSpec(20_000 + i, 6, 0, 0));
        TestContext.Current.TestOutputHelper?.WriteLine(six.Row("no weak pitch, 6 sessions"));
        Assert.True(six.FalseSeasons <= Math.Max(2, 0.05 * six.Seasons), $"{six}");
    }
}
