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
        Assert.Equal(["b", "basss"], bass.Letters);
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
    [InlineData("date: 2027-05-22", "date: soon", "soon", "'date' must be a date")]
    [InlineData("id: swallowed, ", "", "{words", "a mark needs 'id'")]
    [InlineData("praise: false", "praise: 0", "0}", "'praise' must be true or false")]
    public void Each_fault_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Samples.Choir, right, wrong);
        Expect.OneProblem(Read(source), source, Samples.InContext(source, wrong, at), words);
    }

    [Fact]
    public void Parts_must_be_there() =>
        Assert.Contains("choir.yaml needs 'parts'", Assert.Single(Read("format: 1\nname: x\n").Problems).Message, StringComparison.Ordinal);

    private static FileRead<Choir> Read(string source) => ChoirFile.Read("choir.yaml", Expect.Bytes(source));
}
