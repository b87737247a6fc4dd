using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Text;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Voices;

public class PitchRangeTextTests
{
    [Theory]
    [InlineData("C4-G5", 60, 79)]
    [InlineData("Bb2–D4", 46, 62)]
    [InlineData("C-1-C4", 0, 60)]
    [InlineData("C4 - C4", 60, 60)]
    public void Ranges_are_read(string text, int low, int high)
    {
        PitchRange range = PitchRangeText.Parse(text).Value;

        Assert.Equal((low, high), (range.Low.Midi, range.High.Midi));
    }

    [Theory]
    [InlineData("C4")]
    [InlineData("C4-")]
    [InlineData("-G5")]
    [InlineData("C4-H5")]
    [InlineData("C4 to G5")]
    [InlineData("")]
    public void What_is_no_range_says_what_one_looks_like(string text) =>
        Assert.Equal(new TextError(0, text.Length, MusicTextErrors.Range(text)), Assert.Single(PitchRangeText.Parse(text).Errors));

    [Fact]
    public void A_range_upside_down_is_named_as_such() =>
        Assert.Equal(MusicTextErrors.RangeOrder("G5", "C4"), Assert.Single(PitchRangeText.Parse("G5-C4").Errors).Message);

    [Theory]
    [InlineData("C4-G5")]
    [InlineData("Bb2-F#4")]
    public void What_is_written_reads_back(string text) => Assert.Equal(text, PitchRangeText.Write(PitchRangeText.Parse(text).Value));

    [Fact]
    public void A_range_contains_its_ends_and_what_lies_between()
    {
        PitchRange range = new(Pitch.Parse("C4"), Pitch.Parse("G5"));

        Assert.True(range.Contains(60) && range.Contains(79) && range.Contains(70));
        Assert.False(range.Contains(59) || range.Contains(80));
        Assert.True(range.Contains(new PitchRange(Pitch.Parse("D4"), Pitch.Parse("G5"))));
        Assert.Equal(19, range.Semitones);
        Assert.Throws<ArgumentException>(() => new PitchRange(Pitch.Parse("G5"), Pitch.Parse("C4")));
    }

    [Theory]
    [InlineData("Soprano", "the sopranos")]
    [InlineData("Bass", "the basses")]
    [InlineData("Women", "the women")]
    [InlineData("Trebles", "the trebles")]
    [InlineData("Children", "the children")]
    [InlineData("Alto 1", "the singers of Alto 1")]
    public void A_part_is_named_in_sentences_by_its_singers(string name, string words) =>
        Assert.Equal(words, PartPlural.Of(Samples.Part(name, "C4-G5", "C4-F5", 0)));
}
