using CsCheck;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public class BarTests
{
    [Theory]
    [InlineData(2, "2/4")]
    [InlineData(3, "3/4")]
    [InlineData(4, "4/4")]
    [InlineData(5, "5/4")] // a single beat joins the bar before
    [InlineData(6, "3/4 3/4")]
    [InlineData(7, "4/4 3/4")]
    [InlineData(8, "4/4 4/4")]
    [InlineData(9, "3/4 3/4 3/4")]
    [InlineData(10, "4/4 4/4 2/4")]
    [InlineData(13, "4/4 4/4 5/4")]
    [InlineData(0.5, "1/8")]
    [InlineData(4.5, "9/8")]
    [InlineData(5.5, "4/4 3/8")]
    public void A_stretch_is_cut_into_bars_of_four_or_three_beats(double beats, string meters) =>
        Assert.Equal(meters, string.Join(' ', Bar.Of(new((long)(beats * Beats.TicksPerBeat))).Select(bar => bar.Meter)));

    [Fact]
    public void Bars_fill_any_stretch_without_gap_and_each_fits_its_signature() => Gen.Long[1, 64 * Beats.TicksPerBeat].Sample(ticks =>
    {
        IReadOnlyList<Bar> bars = Bar.Of(new(ticks));
        Assert.Equal(ticks, bars.Sum(bar => bar.Length.Ticks));
        Assert.Equal(bars.Select(bar => bar.End).SkipLast(1).Prepend(Beats.Zero), bars.Select(bar => bar.Start));
        Assert.All(bars, bar => Assert.True(bar.Length > Beats.Zero && bar.Meter.Length >= bar.Length && bar.Meter.Length - bar.Length < Beats.FromFraction(1, 2)));
    });

    [Fact]
    public void A_length_between_sixty_fourths_is_rounded_up_to_an_eighth() => Assert.Equal("3/8", Meter.For(Beats.FromFraction(4, 3)).ToString());
}
