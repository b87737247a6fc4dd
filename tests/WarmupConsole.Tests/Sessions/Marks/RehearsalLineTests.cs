using CsCheck;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Marks;

public class RehearsalLineTests
{
    [Theory]
    [InlineData("Harbour hymn 12-15 a flat", "Harbour hymn", "12-15", "a flat")]
    [InlineData("Harbour hymn, bars 12 – 15: a flat", "Harbour hymn", "12–15", "a flat")]
    [InlineData("12 a flat", "last", "12", "a flat")]
    [InlineData("bar 7 t late", "last", "7", "t late")]
    [InlineData("Hymn: a flat at B4", "Hymn", "", "a flat at B4")]
    [InlineData("a flat at B4", "last", "", "a flat at B4")]
    [InlineData("Op. 12", "Op.", "12", "")]
    [InlineData("", "last", "", "")]
    public void Piece_bars_and_words_come_apart(string typed, string piece, string bars, string words) =>
        Assert.Equal(new RehearsalLine(piece, bars, words), RehearsalLine.Read(typed, "last"));

    [Fact]
    public void No_text_whatever_throws() => Gen.String.Sample(text => { RehearsalLine.Read(text, ""); });

    [Theory]
    [InlineData("flat", 71, "pitch", "B4")]
    [InlineData("flat", 73, "pitch", "Db5")]
    [InlineData(null, 71, "pitch", "B4")]
    [InlineData("late", null, "purpose", "time.quick")]
    [InlineData("good", 71, null, null)]
    [InlineData(null, null, null, null)]
    public void A_mark_asks_for_its_pitch_or_for_what_helps_its_kind(string? kind, int? pitch, string? field, string? value)
    {
        IReadOnlyList<IReadOnlyList<(string Name, string Value)>> needs = RehearsalNeeds.Of(new("", "Hymn", "3", ["alto", "bass"], kind, pitch, "", 0), SampleChoir.Four);

        Assert.Equal(field is null ? 0 : 2, needs.Count);
        Assert.All(needs.Zip(["alto", "bass"]), need => Assert.Equal([("part", need.Second), (field!, value!), ("piece", "Hymn"), ("bars", "3")], need.First));
    }

    [Fact]
    public void Without_a_part_everyone_is_meant() =>
        Assert.Equal(("part", "everyone"), RehearsalNeeds.Of(new RehearsalMarked("", "", "", [], "flat", 60, "", 0), SampleChoir.Four)[0][0]);

    [Theory]
    [InlineData("strained", 78, "pitch", "Gb5")]
    [InlineData("pressed", null, "purpose", "resonance.open")]
    [InlineData("tired", null, "purpose", "time.slow")]
    [InlineData("hoarse", null, "purpose", "time.slow")]
    public void What_was_too_much_goes_with_its_kind_so_that_it_is_spared(string kind, int? pitch, string field, string value) => Assert.Equal(
        [("part", "soprano"), (field, value), ("kind", kind), ("piece", "Hymn")],
        RehearsalNeeds.Of(new("", "Hymn", "", ["soprano"], kind, pitch, "", 0), SampleChoir.Four).Single());
}
