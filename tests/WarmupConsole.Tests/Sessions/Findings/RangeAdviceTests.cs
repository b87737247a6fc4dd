using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>The altos' comfortable top is C5 (72), their extreme D5 (74). The eight keys from C4 take an octave leap up to G5 (79).</summary>
public class RangeAdviceTests
{
    private static readonly string[] High = ["octave-leap", "octave-arpeggio", "six-quick"];

    [Fact]
    public void What_is_sung_often_beyond_the_limit_without_trouble_widens_it_by_at_most_a_whole_tone()
    {
        RangeAdvice advice = Assert.Single(Altos(8, rung => rung.Tonic == 60 && rung.Exercise == "six-quick" ? HandMade.Flat(60) : null), one => one.IsTop);
        Assert.True(advice.IsWider);
        Assert.Equal(74, advice.Proposed.Comfortable.High.Midi);
        Assert.Equal([73, 74], advice.Evidence.Select(pitch => pitch.Midi));
        Assert.Equal("comfortable top of the altos: C5 to D5", FindingText.Title(advice, SeasonChoir.Choir));
        Assert.EndsWith("Accept it with: warmup ranges accept alto", FindingText.Sentence(advice, SeasonChoir.Choir), StringComparison.Ordinal);
    }

    [Fact]
    public void Trouble_at_the_limit_narrows_it()
    {
        RangeAdvice advice = Assert.Single(Altos(8, rung => HandMade.Sings(rung.Exercise, rung.Tonic, 72) ? HandMade.Flat(rung.Tonic, kind: "strained") : null), one => one.IsTop);
        Assert.False(advice.IsWider);
        Assert.Equal(71, advice.Proposed.Comfortable.High.Midi);
    }

    [Fact]
    public void Two_evenings_move_nothing() => Assert.Empty(Altos(2, rung => rung.Tonic == 60 ? HandMade.Flat(60) : null));

    [Fact]
    public void Where_nothing_is_ever_marked_silence_proves_nothing() => Assert.Empty(Altos(8, _ => null));

    [Fact]
    public void Advice_on_both_ends_moves_both()
    {
        RangeAdvice top = Assert.Single(Altos(8, rung => rung.Tonic == 60 && rung.Exercise == "six-quick" ? HandMade.Flat(60) : null), one => one.IsTop);
        RangeAdvice bottom = top with { IsTop = false, Proposed = top.Proposed with { Comfortable = new(new(0, 0, 4), SeasonChoir.Choir.Parts[1].Range.Comfortable.High) } };
        Assert.Equal("C4–D5", RangeAdvice.Together([bottom, top]).Comfortable.ToString());
    }

    private static IEnumerable<RangeAdvice> Altos(int evenings, Func<(int Evening, string Exercise, int Tonic), WarmupConsole.Tests.Sessions.Review.SampleMark?> marked) =>
        HandMade.Findings(evenings, High, marked).Ranges.Where(advice => advice.Part == "alto");
}
