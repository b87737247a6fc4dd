using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>An evening on which a part was thin, tired or had colds weighs less for it, in what it sang and in what was marked.</summary>
public class WeakEveningTests
{
    [Theory]
    [InlineData(0.5, 2)]
    [InlineData(0.25, 4)]
    public void Rungs_and_their_marks_count_that_much_less(double weight, int less)
    {
        IReadOnlyList<SungSession> sessions = HandMade.Sessions(4, [SeasonPatterns.Rows[0].Id], rung => HandMade.Flat(rung.Tonic));
        (double exposed, double marked) = Alto(sessions);
        (double weakExposed, double weakMarked) = Alto([.. sessions.Select(session => session with { Weights = new Dictionary<string, double> { ["alto"] = weight } })]);

        Assert.Equal(exposed / less, weakExposed);
        Assert.Equal(marked / less, weakMarked, 6);
        Assert.Equal(exposed, Alto([.. sessions.Select(session => session with { Weights = new Dictionary<string, double> { ["bass"] = weight } })]).Exposed);
    }

    [Fact]
    public void What_was_told_of_the_evening_is_what_it_weighs()
    {
        SampleLog log = new SampleLog().Started()
            .After(0, new TonightTold(["tenor"], [-1], [true], [false], "usual", "t colds"))
            .After(1, new TonightTold(["alto", "tenor"], [1, -1], [false, true], [false, true], "usual", "a 1, t colds tired"));
        SungSession session = SungSession.From("evening", log.Records, SeasonChoir.Choir, SeasonPatterns.Exercises, new());

        Assert.Equal(["alto", "tenor"], session.Weights.Keys.Order(StringComparer.Ordinal));
        Assert.Equal((0.5, 0.25), (session.Weights["alto"], session.Weights["tenor"]));
    }

    private static (double Exposed, double Marked) Alto(IReadOnlyList<SungSession> sessions)
    {
        RateRow[] rows = [.. ChoirFindings.From(sessions, SeasonChoir.Choir).Rates.Where(row => row is { Part: "alto", Kind: "flat", Aspect: Aspect.Minute })];
        return (rows.Sum(row => row.Rate.Exposed), rows.Sum(row => row.Rate.Marked));
    }
}
