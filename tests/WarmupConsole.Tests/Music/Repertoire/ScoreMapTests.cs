using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Repertoire;

public sealed class ScoreMapTests
{
    private const string High = "E5 D5 F5 C5 D5 E5";
    private const string Middle = "A4 G4 B4 F4 G4 A4";
    private const string LowTreble = "E4 D4 F4 C4 D4 E4";
    private const string Low = "A2 C3 D3 A2 B2 C3";
    private static readonly Part[] Choir = [Voice("soprano", "C4-G5", "C4-F5", "women"), Voice("alto", "G3-D5", "G3-C5", "women"), Voice("tenor", "C3-A4", "C3-F4", "men"), Voice("bass", "F2-D4", "G2-C4", "men")];

    [Theory]
    [InlineData("Soprano", "soprano")]
    [InlineData("SOPRANO II.", "soprano")]
    [InlineData("Canto", "soprano")]
    [InlineData("S.", "soprano")]
    [InlineData("Altus", "alto")]
    [InlineData("A 2", "alto")]
    [InlineData("Ténor", "tenor")]
    [InlineData("Basso continuo", null)]
    [InlineData("Double Bass", null)]
    [InlineData("Baritone", "bass")]
    [InlineData("Klavierauszug", null)]
    [InlineData("Piano for practice only", null)]
    public void A_name_says_who_sings(string name, string? singer)
    {
        Score score = Scored.Of(Scored.Part("P1", name, "G2", Scored.Line(Middle)), Scored.Part("P2", "Soprano", "G2", Scored.Line(High)));
        Assert.Equal(singer, ScoreMap.Guess(score, Choir).Lines[0].Singer?.Id);
    }

    [Fact]
    public void Lines_without_names_go_by_clef_and_tessitura()
    {
        Score score = Scored.Of(Scored.Part("P1", "", "G2", Scored.Line(High)), Scored.Part("P2", "", "G2-8", Scored.Line(LowTreble)), Scored.Part("P3", "", "F4", Scored.Line(Low)));
        Assert.Equal(["soprano", "tenor", "bass"], Singers(score));
    }

    [Fact]
    public void As_many_descending_lines_as_parts_are_the_parts_in_their_order()
    {
        Score score = Scored.Of(Scored.Part("P1", "", "G2", Scored.Line("C5 C5")), Scored.Part("P2", "", "G2", Scored.Line("B4 B4")), Scored.Part("P3", "", "G2", Scored.Line("A4 A4")), Scored.Part("P4", "", "F4", Scored.Line("G4 G4")));
        Assert.Equal(["soprano", "alto", "tenor", "bass"], Singers(score));
    }

    [Fact]
    public void Of_two_voices_on_a_staff_the_upper_is_the_higher_part()
    {
        PartNote[] both = [.. Scored.Line(High), .. Scored.Line(Middle, note => note with { Voice = "2" })];
        ScoreMap map = ScoreMap.Guess(Scored.Of(Scored.Part("P1", "S A", "G2", both), Scored.Part("P2", "Bass", "F4", Scored.Line(Low))), Choir);
        Assert.Equal([("1", "soprano"), ("2", "alto"), ("", "bass")], map.Lines.Select(line => (line.Line.Voice, line.Singer!.Id)));
    }

    [Fact]
    public void A_divided_moment_of_one_part_stays_with_it()
    {
        PartNote[] both = [.. Scored.Line(Middle), .. Scored.Line("F4", note => note with { Voice = "2" })];
        Assert.Equal(["alto"], Singers(Scored.Of(Scored.Part("P1", "Alto", "G2", both))));
    }

    [Fact]
    public void A_part_of_chords_without_words_beside_sung_words_is_left_out()
    {
        PartNote[] words = [.. Scored.Line(High).Select(note => note with { Lyric = "la" })];
        Score score = Scored.Of(Scored.Part("P1", "", "G2", words), Scored.Part("P2", "", "G2", Scored.Line("C4+E4+G4 D4+F4 C4+E4")));
        Assert.Equal(["soprano", null], ScoreMap.Guess(score, Choir).Lines.Select(line => line.Singer?.Id));
    }

    [Fact]
    public void A_score_of_instruments_alone_is_taken_whole() =>
        Assert.NotEmpty(ScoreMap.Guess(Scored.Of(Scored.Part("P1", "Clarinet in Bb", "G2", Scored.Line(High))), Choir).Sung);

    [Fact]
    public void Parts_without_ids_or_with_the_same_are_named_by_their_place()
    {
        Score score = Scored.Of(Scored.Part("", "", "G2", Scored.Line(High)), Scored.Part("P1", "", "G2", Scored.Line(High)), Scored.Part("P1", "", "G2", Scored.Line(High)));
        Assert.Equal(["#1", "#2", "#3"], ScoreLine.Whole(score).Select(line => line.Key));
    }

    private static IEnumerable<string?> Singers(Score score) => ScoreMap.Guess(score, Choir).Lines.Select(line => line.Singer?.Id);

    private static Part Voice(string id, string extreme, string comfortable, string group) =>
        new(id, char.ToUpperInvariant(id[0]) + id[1..], [id[..1]], [group], 10, group == "men" ? -1 : 0, new(Range(extreme), Range(comfortable)));

    private static PitchRange Range(string text) => new(Pitch.Parse(text.Split('-')[0]), Pitch.Parse(text.Split('-')[1]));
}
