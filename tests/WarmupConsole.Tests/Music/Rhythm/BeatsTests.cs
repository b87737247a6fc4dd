using CsCheck;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public class BeatsTests
{
    [Theory]
    [InlineData(1, 3, 320)]
    [InlineData(3, 2, 1440)]
    [InlineData(-1, 5, -192)]
    [InlineData(1, 64, 15)]
    public void Halves_triplets_and_quintuplets_are_exact(int numerator, int denominator, long ticks) =>
        Assert.Equal(ticks, Beats.FromFraction(numerator, denominator).Ticks);

    [Theory]
    [InlineData(1, 7)]
    [InlineData(1, 0)]
    [InlineData(1, -2)]
    public void A_fraction_between_two_ticks_is_refused(int numerator, int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Beats.FromFraction(numerator, denominator));

    [Theory]
    [InlineData("2", 1920)]
    [InlineData("0.5", 480)]
    [InlineData("1.25", 1200)]
    [InlineData("1/3", 320)]
    [InlineData("6/4", 1440)]
    [InlineData("64", 61440)]
    public void Lengths_are_read(string text, long ticks)
    {
        Assert.True(BeatsText.TryParse(text, out Beats beats));
        Assert.Equal(ticks, beats.Ticks);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("65")]
    [InlineData("-1")]
    [InlineData("1/0")]
    [InlineData("1/7")]
    [InlineData("0.333")]
    [InlineData("1/2/3")]
    [InlineData(".5.5")]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("1e3")]
    [InlineData("9999999999999999999")]
    public void What_is_no_length_or_out_of_range_is_refused(string text) => Assert.False(BeatsText.TryParse(text, out _));

    [Fact]
    public void What_is_written_reads_back() => Gen.Long[1, 64 * Beats.TicksPerBeat].Sample(ticks =>
    {
        Assert.True(BeatsText.TryParse(BeatsText.Write(new(ticks)), out Beats beats));
        Assert.Equal(ticks, beats.Ticks);
    });

    [Fact]
    public void Beats_add_scale_and_compare_like_their_ticks() => Gen.Select(Gen.Int, Gen.Int, Gen.Int[-9, 9]).Sample((a, b, times) =>
    {
        Assert.Equal((long)a + b, (new Beats(a) + new Beats(b)).Ticks);
        Assert.Equal((long)a - b, (new Beats(a) - new Beats(b)).Ticks);
        Assert.Equal((long)a * times, (new Beats(a) * times).Ticks);
        Assert.Equal(a < b, new Beats(a) < new Beats(b));
        Assert.Equal(a >= b, new Beats(a) >= new Beats(b));
    });
}
