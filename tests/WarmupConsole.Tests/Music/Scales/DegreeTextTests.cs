using CsCheck;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Tests.Music.Scales;

public class DegreeTextTests
{
    private static readonly Gen<Degree> AnyDegree = Gen.Select(
        Gen.Int[1, 7], Gen.Int[-2, 2], Gen.Int[-3, 2], (number, alteration, octave) => new Degree(number, alteration, octave));

    [Theory]
    [InlineData("1", 1, 0, 0)]
    [InlineData("8", 1, 0, 1)]
    [InlineData("10", 3, 0, 1)]
    [InlineData("21", 7, 0, 2)]
    [InlineData("7,", 7, 0, -1)]
    [InlineData("5,,", 5, 0, -2)]
    [InlineData("b3", 3, -1, 0)]
    [InlineData("♯4", 4, 1, 0)]
    [InlineData("b7,", 7, -1, -1)]
    [InlineData("do", 1, 0, 0)]
    [InlineData("do'", 1, 0, 1)]
    [InlineData("so,", 5, 0, -1)]
    [InlineData("fi", 4, 1, 0)]
    [InlineData("te,", 7, -1, -1)]
    [InlineData("re''", 2, 0, 2)]
    public void Numbers_and_sol_fa_are_read(string text, int number, int alteration, int octave) =>
        Assert.Equal(new Degree(number, alteration, octave), DegreeText.Parse(text).Value);

    [Theory]
    [InlineData("0")]
    [InlineData("22")]
    [InlineData("b")]
    [InlineData("bbb3")]
    [InlineData("3b")]
    [InlineData("1'")]
    [InlineData("do',")]
    [InlineData("ut")]
    [InlineData("")]
    [InlineData("1,,,,")]
    [InlineData("+1")]
    [InlineData("99999999999")]
    public void What_is_no_degree_says_what_one_looks_like(string text)
    {
        Parsed<Degree> parsed = DegreeText.Parse(text);

        TextError error = Assert.Single(parsed.Errors);
        Assert.Equal(new TextError(0, text.Length, MusicTextErrors.Degree(text)), error);
    }

    [Fact]
    public void A_sol_fa_syllable_is_the_same_distance_above_do_in_every_mode() => Gen.Enum<Mode>().Sample(mode =>
    {
        foreach ((string syllable, int semitones) in new[] { ("me", 3), ("mi", 4), ("la", 9), ("le", 8), ("te", 10), ("ti", 11), ("fi", 6), ("ra", 1) })
        {
            Assert.True(DegreeText.TryParse(syllable, mode, out Degree degree));
            Assert.Equal(semitones, ModeData.IntervalOf(mode, degree).Semitones);
        }
    });

    [Fact]
    public void In_minor_the_plain_third_is_me()
    {
        Assert.Equal("me", DegreeText.WriteSolfa(new(3, 0, 0), Mode.Minor));
        Assert.Equal("3", DegreeText.Parse("me", Mode.Minor).Value.ToString());
    }

    [Fact]
    public void What_is_written_as_a_number_reads_back() => AnyDegree.Sample(degree => Assert.Equal(degree, DegreeText.Parse(DegreeText.Write(degree)).Value));

    [Fact]
    public void What_is_written_as_sol_fa_reads_back() => Gen.Select(AnyDegree, Gen.Enum<Mode>()).Sample((degree, mode) =>
        Assert.Equal(degree, DegreeText.Parse(DegreeText.WriteSolfa(degree, mode), mode).Value));
}
