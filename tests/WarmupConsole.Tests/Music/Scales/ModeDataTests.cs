using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Scales;

public class ModeDataTests
{
    [Fact]
    public void Every_mode_is_found_by_its_file_name() => Assert.All(Enum.GetValues<Mode>(), mode =>
    {
        Assert.True(ModeData.TryFind(ModeData.Id(mode), out Mode found));
        Assert.Equal(mode, found);
    });

    [Fact]
    public void Names_are_unique_and_others_are_not_found()
    {
        Assert.Equal(Enum.GetValues<Mode>().Length, ModeData.Ids.Distinct().Count());
        Assert.False(ModeData.TryFind("locrian", out _));
    }

    [Fact]
    public void Scales_rise_from_the_tonic_and_stay_under_the_octave() => Assert.All(Enum.GetValues<Mode>(), mode =>
    {
        int[] scale = [.. Enumerable.Range(1, 7).Select(number => ModeData.Semitones(mode, number))];
        Assert.Equal(0, scale[0]);
        Assert.Equal(scale.Order().Distinct(), scale);
        Assert.True(scale[^1] < 12);
    });

    // Common practice: minor third 3, sixth 8, seventh 10 natural or 11 harmonic.
    [Theory]
    [InlineData(Mode.Minor, 3, 3)]
    [InlineData(Mode.Minor, 6, 8)]
    [InlineData(Mode.Minor, 7, 10)]
    [InlineData(Mode.HarmonicMinor, 7, 11)]
    public void Minor_has_its_own_third_sixth_and_seventh(Mode mode, int number, int semitones) =>
        Assert.Equal(semitones, ModeData.Semitones(mode, number));

    [Fact]
    public void Degrees_beyond_the_octave_and_altered_ones_have_their_distance()
    {
        Assert.Equal(new(9, 16), ModeData.IntervalOf(Mode.Major, new(3, 0, 1)));
        Assert.Equal(new(-1, -1), ModeData.IntervalOf(Mode.Major, new(7, 0, -1)));
        Assert.Equal(new(3, 6), ModeData.IntervalOf(Mode.Major, new(4, 1, 0)));
    }
}
