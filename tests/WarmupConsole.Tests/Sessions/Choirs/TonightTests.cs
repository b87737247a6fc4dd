using CsCheck;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Choirs;

public class TonightTests
{
    private static readonly Choir Choir = LiveFixtures.WithExtremes;

    [Theory]
    [InlineData("t 2", "tenors 2")]
    [InlineData("t2 b3 colds, tired", "tenors 2, basses 3 colds, tired")]
    [InlineData("altos and tenors cold", "altos colds, tenors colds")]
    [InlineData("a tired", "altos tired")]
    [InlineData("tired", "tired")]
    [InlineData("fresh", "fresh")]
    [InlineData("colds", "sopranos colds, altos colds, tenors colds, basses colds")]
    [InlineData("b 0; s 20 with colds", "sopranos 20 colds, basses 0")]
    [InlineData("t 2, t 3", "tenors 3")]
    [InlineData("", "")]
    [InlineData("  ,, ", "")]
    public void What_is_typed_is_understood(string typed, string words) =>
        Assert.Equal(words, TonightText.Write(TonightText.Read(typed, Choir)!, Choir));

    [Theory]
    [InlineData("2")]
    [InlineData("t")]
    [InlineData("t late")]
    [InlineData("t 2 x")]
    [InlineData("t 1000")]
    [InlineData("t -2")]
    [InlineData("colds t")]
    [InlineData("everyone 0")]
    [InlineData("t ٣")]
    public void What_is_not_understood_is_not_guessed(string typed) => Assert.Null(TonightText.Read(typed, Choir));

    [Fact]
    public void What_is_written_reads_back_as_the_same()
    {
        Gen<PartTonight?> part = Gen.Select(Gen.Int[-1, 30], Gen.Bool, Gen.Bool, (heads, colds, tired) => heads < 0 && !colds && !tired ? null : new PartTonight("", heads < 0 ? null : heads, colds, tired));
        Gen.Select(part.Array[4], Gen.Enum<Energy>(), (parts, energy) => new Tonight
        {
            Energy = energy,
            Parts = [.. parts.Zip(Choir.Parts, (one, known) => one is null ? null! : one with { PartId = known.Id }).Where(one => one is not null)],
        }).Where(tonight => tonight.Parts.Count(one => one.Heads == 0) < 4).Sample(tonight => tonight.Equals(TonightText.Read(TonightText.Write(tonight, Choir), Choir)));
    }

    [Fact]
    public void No_text_whatever_throws() => Gen.String.Sample(text => { TonightText.Read(text, Choir); });

    [Theory]
    [InlineData("", 100, 1)]
    [InlineData("fresh", 100, 1)]
    [InlineData("t 5", 100, 1)]
    [InlineData("t 4", 50, 0.5)]
    [InlineData("t tired", 50, 0.5)]
    [InlineData("tired", 50, 0.5)]
    [InlineData("t 4 tired", 25, 0.25)]
    [InlineData("t colds", 0, 0.5)]
    [InlineData("t 1 colds, tired", 0, 0.125)]
    public void A_thin_or_tired_part_goes_less_far_and_weighs_less(string typed, int reach, double weight)
    {
        Tonight tonight = TonightText.Read(typed, Choir)!;
        Assert.Equal((reach, weight), (tonight.ReachPercentOf(Choir.Parts[2]), tonight.WeightOf(Choir.Parts[2])));
    }

    [Fact]
    public void What_a_part_can_sing_at_all_comes_in_towards_what_is_easy()
    {
        Choir tonight = TonightText.Read("t colds, b 2, s 0", Choir)!.Of(Choir);

        Assert.Equal(["alto", "tenor", "bass"], tonight.Parts.Select(part => part.Id));
        Assert.Equal(Choir.Parts[1], tonight.Parts[0]);
        Assert.Equal(tonight.Parts[1].Range.Comfortable, tonight.Parts[1].Range.Extreme);
        (int usual, int easy) = (Choir.Parts[3].Range.Extreme.High.Midi, Choir.Parts[3].Range.Comfortable.High.Midi);
        Assert.Equal(easy + ((usual - easy) / 2), tonight.Parts[2].Range.Extreme.High.Midi);
    }

    [Theory]
    [InlineData("t colds, b 2", "tenors: no further than is easy; basses: half as far beyond easy")]
    [InlineData("tired", "everyone: half as far beyond easy")]
    [InlineData("b 0", "without basses")]
    [InlineData("fresh", "")]
    public void What_follows_is_said(string typed, string effect) => Assert.Equal(effect, TonightText.Effect(TonightText.Read(typed, Choir)!, Choir));
}
