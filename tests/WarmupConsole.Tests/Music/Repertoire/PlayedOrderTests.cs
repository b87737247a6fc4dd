using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Repertoire;

/// <summary>The order in which bars are played; the orders expected are common practice, counted by hand.</summary>
public sealed class PlayedOrderTests
{
    public static TheoryData<string, string> Orders { get; } = new()
    {
        { "a b c", "a b c" },
        { "a |:b c:| d", "a b c b c d" },
        { "a b:| c", "a b a b c" },
        { "|:a:| |:b c:| d", "a a b c b c d" },
        { "|:a:|x3 b", "a a a b" },
        { "a b[1]:| c[2] d", "a b a c d" },
        { "a b[1] c[1]:| d[2] e", "a b c a d e" },
        { "a |:b c[1]:| d[2] |:e f[1]:| g[2]", "a b c b d e f e g" },
        { "|:a b[1,2]:| c[3] d", "a b a b a c d" },
        { "a b(Fine) c(D.C.)", "a b c a b" },
        { "a b(Segno) c(Fine) d(D.S.)", "a b c d b c" },
        { "a(Segno) b(To) c(D.S.) d(Coda) e", "a b c a b d e" },
        { "a b(To) c(D.C.) d(Coda) e", "a b c a b d e" },
        { "|:a b[1]:| c[2](Fine) d(D.C.)", "a b a c d a c" },
        { "|:a:| b(Fine) c(D.C.)", "a a b c a b" },
    };

    [Theory]
    [MemberData(nameof(Orders))]
    public void Signs_lead_where_musicians_go(string written, string played)
    {
        ScoreBar[] bars = Bars(written);
        Assert.Equal(played, string.Join(' ', PlayedOrder.Of(bars).Select(bar => bars[bar].Number)));
    }

    /// <summary>A coda before its sign.</summary>
    [Fact]
    public void Signs_that_lead_in_a_circle_come_to_an_end() =>
        Assert.Equal(PlayedOrder.MostBars, PlayedOrder.Of(Bars("a(Coda) b(To) c(D.C.)")).Count);

    /// <summary>"|:" and ":|" around a repeated stretch ("x3": three times), "[1,2]" an ending, signs in brackets.</summary>
    private static ScoreBar[] Bars(string written) =>
        [.. written.Split(' ').Select((bar, index) => new ScoreBar(bar.TrimStart('|', ':')[..1], Beats.FromBeats(4 * index), Beats.FromBeats(4), Jumps(bar)))];

    private static BarJumps Jumps(string bar) => new()
    {
        RepeatStarts = bar.StartsWith("|:", StringComparison.Ordinal),
        RepeatTimes = !bar.Contains(":|", StringComparison.Ordinal) ? 0 : bar.EndsWith("x3", StringComparison.Ordinal) ? 3 : 2,
        Endings = bar.IndexOf('[', StringComparison.Ordinal) is var at and >= 0 ? [.. bar[(at + 1)..bar.IndexOf(']', StringComparison.Ordinal)].Split(',').Select(int.Parse)] : [],
        DaCapo = bar.Contains("(D.C.)", StringComparison.Ordinal),
        DalSegno = bar.Contains("(D.S.)", StringComparison.Ordinal) ? "1" : "",
        Segno = bar.Contains("(Segno)", StringComparison.Ordinal) ? "1" : "",
        Coda = bar.Contains("(Coda)", StringComparison.Ordinal) ? "1" : "",
        ToCoda = bar.Contains("(To)", StringComparison.Ordinal) ? "1" : "",
        Fine = bar.Contains("(Fine)", StringComparison.Ordinal),
    };
}
