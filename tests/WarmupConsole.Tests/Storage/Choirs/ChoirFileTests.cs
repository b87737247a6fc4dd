using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Choirs;

public sealed class ChoirFileTests
{
    [Fact]
    public void The_documented_choir_is_read()
    {
        Choir choir = Read(Samples.Choir).Value!;
        Assert.Equal(("The Lantern Quay Singers", "Saltmarsh Ferry", false, 120), (choir.Name, choir.Town, choir.Demo, choir.RehearsalMinutes));
        Part soprano = choir.Parts[0];
        Assert.Equal(("soprano", "Soprano", 14, 0), (soprano.Id, soprano.Name, soprano.Singers, soprano.PlacementOctaves));
        Assert.Equal(["s", "sop"], soprano.Letters);
        Assert.Equal(["women", "upper"], soprano.Groups);
        Assert.Equal(new PitchRange(Pitch.Parse("C4"), Pitch.Parse("G5")), soprano.Range.Extreme);
        Assert.Equal(new Concert(new(2027, 5, 22), "Spring concert"), Assert.Single(choir.Concerts));
        Assert.Equal(("swallowed", "swallowed tone", false), (choir.OwnMarkKinds[0].Id, choir.OwnMarkKinds[0].Words, choir.OwnMarkKinds[0].IsPraise));
        Assert.Equal(["swallowing"], choir.OwnMarkKinds[0].Spellings);
    }

    [Fact]
    public void A_part_without_name_and_letters_gets_them_from_its_id()
    {
        Part bass = Read(Samples.Choir).Value!.Parts[1];
        Assert.Equal("Bass", bass.Name);
        Assert.Equal(["b", "basses"], bass.Letters);
    }

    [Theory]
    [InlineData("name: The Lantern Quay Singers\n", "", "format", "choir.yaml needs 'name'")]
    [InlineData("name: The Lantern Quay Singers", "name: ''", "''", "'name' is empty")]
    [InlineData("town: Saltmarsh Ferry", "twon: Saltmarsh Ferry", "twon", "did you mean 'town'?")]
    [InlineData("demo: false", "demo: maybe", "maybe", "'demo' must be true or false")]
    [InlineData("rehearsal: 120", "rehearsal: 29", "29", "out of range (30 to 300 minutes)")]
    [InlineData("id: soprano", "id: bass", "id: ^bass\n    groups", "id 'bass' is already used in line 7")]
    [InlineData("id: soprano", "id: Soprano 1", "Soprano 1", "lower-case")]
    [InlineData("id: soprano", "id: any", "any", "'any' always has a meaning of its own")]
    [InlineData("letters: [s, sop]", "letters: [B, sop]", "id: bass", "letters 'b' is already used in line 9")]
    [InlineData("letters: [s, sop]", "letters: []", "[]", "0 entries, which is out of range (1 to 12 spellings)")]
    [InlineData("groups: [men]", "groups: [The Men]", "The Men", "lower-case")]
    [InlineData("singers: 14", "singers: 501", "501", "out of range (0 to 500 singers)")]
    [InlineData("placement: 0", "placement: -4", "-4", "out of range (-3 to 3 octaves)")]
    [InlineData("extreme: C4-G5", "extreme: G5-C4", "G5-C4", "lies above the highest note")]
    [InlineData("extreme: C4-G5", "extreme: C4 to G5", "C4 to G5", "is no range")]
    [InlineData("    extreme: C4-G5\n", "", "id: soprano", "a part needs 'extreme'")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-A5", "C4-A5", "lies partly outside the extreme range C4-G5")]
    [InlineData("demo: false", "notes: danish", "danish", "'notes' cannot be 'danish'; write one of scientific, helmholtz, german, dutch, fixed-do")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    start: soon", "soon", "'start' must be true or false")]
    [InlineData("    comfortable: C4-F5", "    ranges: [{from: 2027-01-12, extreme: C4-G5, comfortable: C4-F5}]", "id: soprano", "a part needs 'comfortable'")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: []", "[]", "0 entries, which is out of range (1 to 200 entries)")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{extreme: C4-A5, comfortable: C4-F5}]", "{extreme", "a dated range needs 'from'")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: 2027-01-12, extreme: C4-A5}]", "{from", "a dated range needs 'comfortable'")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: January, extreme: C4-A5, comfortable: C4-F5}]", "January", "'from' must be a date")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: 2027-01-12, extreme: C4-A5, comfortable: B3-F5}]", "B3-F5", "lies partly outside")]
    [InlineData("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: 2027-01-12, extreme: C4-A5, comfortable: C4-F5, start: true}]", "start", "a dated range has no 'start'")]
    [InlineData("date: 2027-05-22", "date: soon", "soon", "'date' must be a date")]
    [InlineData("id: swallowed, ", "", "{words", "a mark needs 'id'")]
    [InlineData("praise: false", "praise: 0", "0}", "'praise' must be true or false")]
    public void Each_fault_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Samples.Choir, right, wrong);
        Expect.OneProblem(Read(source), source, Samples.InContext(source, wrong, at), words);
    }

    [Fact]
    public void Of_dated_ranges_the_newest_that_is_not_after_the_day_counts()
    {
        string source = Samples.Bend(Samples.Choir, "comfortable: C4-F5", """
            comfortable: C4-F5
                start: true
                ranges:
                  - {from: 2027-01-12, extreme: C4-A5, comfortable: C4-F5}
                  - {from: 2026-09-01, extreme: B3-G5, comfortable: C4-E5}
            """);
        Choir choir = Read(source).Value!;
        Assert.Equal("C4–A5", choir.Parts[0].Range.Extreme.ToString());
        Assert.Equal(
            ["C4–G5", "B3–G5", "B3–G5", "C4–A5"],
            new[] { "2026-08-31", "2026-09-01", "2027-01-11", "2027-01-12" }.Select(day => choir.AsOf(Day(day)).Parts[0].Range.Extreme.ToString()));
        Assert.True(choir.Parts[0].EntryOn(Day("2026-01-01"))!.IsStart);
        Assert.False(choir.Parts[0].EntryOn(Day("2027-06-01"))!.IsStart);
        Assert.Equal(3, choir.AsOf(Day("2026-01-01")).Parts[0].History.Count);
        Assert.Equal("E2–E4", choir.AsOf(Day("2026-01-01")).Parts[1].Range.Extreme.ToString());
    }

    [Fact]
    public void A_part_may_have_dated_ranges_only_and_before_the_first_of_them_that_one_counts()
    {
        string source = Samples.Bend(Samples.Choir, "    extreme: C4-G5\n    comfortable: C4-F5\n", "    ranges: [{from: 2027-01-12, extreme: C4-A5, comfortable: C4-F5}, {from: 2027-03-01, extreme: D4-A5, comfortable: D4-F5}]\n");
        Assert.Equal("C4–A5", Read(source).Value!.AsOf(Day("2020-01-01")).Parts[0].Range.Extreme.ToString());
    }

    [Fact]
    public void A_day_that_stands_twice_is_told()
    {
        string source = Samples.Bend(Samples.Choir, "comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: 2027-01-12, extreme: C4-A5, comfortable: C4-F5}, {from: 2027-01-12, extreme: C4-B5, comfortable: C4-F5}]");
        Expect.OneProblem(Read(source), source, "{from: ^2027-01-12, extreme: C4-B5", "from '2027-01-12' is already used");
    }

    [Fact]
    public void What_is_written_reads_back()
    {
        string source = Samples.Bend(Samples.Choir, "demo: false", "demo: true\nnotes: german").Replace("placement: 0", "placement: 0\n    start: true");
        Choir choir = Read(source).Value!;
        string written = ChoirFile.Write(choir);
        Choir back = Read(written).Value!;
        Assert.Equivalent(choir, back, strict: true);
        Assert.Equal((NoteNaming.German, true, written), (back.Notes, back.Parts[0].History[0].IsStart, ChoirFile.Write(back)));
    }

    [Fact]
    public void Parts_must_be_there() =>
        Assert.Contains("choir.yaml needs 'parts'", Assert.Single(Read("format: 1\nname: x\n").Problems).Message, StringComparison.Ordinal);

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static FileRead<Choir> Read(string source) => ChoirFile.Read("choir.yaml", Expect.Bytes(source));
}
