using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Tests.Sessions.Findings.Estimates;

public class FalseFindingsTests
{
    /// <summary>The fifteen p-values of the example in Benjamini and Hochberg (1995), of which their procedure keeps four at 5 %.</summary>
    [Fact]
    public void The_published_example_keeps_four()
    {
        double[] pValues = [0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1.0];
        double threshold = FalseFindings.Threshold(pValues.Reverse(), 0.05);
        Assert.Equal(4, pValues.Count(p => p <= threshold));
        Assert.Equal(0.05 * 4 / 15, threshold, 12);
    }

    [Fact]
    public void Nothing_striking_gives_no_threshold_at_all() => Assert.Equal(-1, FalseFindings.Threshold([0.2, 0.5, 0.04], 0.05));

    [Fact]
    public void No_questions_give_no_threshold() => Assert.Equal(-1, FalseFindings.Threshold([], 0.05));
}
