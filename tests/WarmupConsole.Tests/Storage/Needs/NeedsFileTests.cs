using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Needs;

public sealed class NeedsFileTests
{
    private const string Good = """
        format: 1
        needs:
          - part: soprano
            pitch: F#5
            piece: Harbour hymn
            bars: 12-15
            until: 2027-05-22
          - {part: upper, region: C5-F5, done: 2027-02-16}
          - purpose: tuning.third
          - {part: soprano, pitch: Gb5, kind: strained}

        """;

    private static readonly Choir Choir = ChoirFile.Read("choir.yaml", Expect.Bytes(Samples.Choir)).Value!;

    [Fact]
    public void The_documented_needs_are_read()
    {
        IReadOnlyList<ChoirNeed> needs = Read(Good).Value!;
        Assert.Equal(new ChoirNeed { Who = "soprano", Pitch = Pitch.Parse("F#5"), Piece = "Harbour hymn", Bars = "12-15", Until = new(2027, 5, 22) }, needs[0]);
        Assert.Equal(("upper", "C5–F5", new DateOnly(2027, 2, 16)), (needs[1].Who, $"{needs[1].Region}", needs[1].Done));
        Assert.Equal(new ChoirNeed { Who = "everyone", Purpose = Purpose.LeapThird }, needs[2]);
        Assert.Equal("strained", needs[3].Kind);
        Assert.Equal(
            ["soprano: F♯5, for Harbour hymn, bars 12-15, until 22 May 2027", "upper: C5–F5", "everyone: leaps of a third", "soprano: strained, G♭5"],
            needs.Select(need => need.WordsIn(NoteNaming.Scientific)));
    }

    [Theory]
    [InlineData("part: soprano", "part: sopranos", "sopranos", "write one of everyone, soprano, bass, women, upper, men")]
    [InlineData("pitch: F#5", "pitch: H5", "H5", "'pitch' must be a pitch")]
    [InlineData("pitch: F#5", "region: C5-F5\n    pitch: F#5", "part: soprano", "exactly one of pitch, region and purpose")]
    [InlineData("    pitch: F#5\n", "", "part: soprano", "exactly one of pitch, region and purpose")]
    [InlineData("C5-F5", "F5-C5", "F5-C5", "'region': ")]
    [InlineData("tuning.third", "tuning.thirds", "tuning.thirds", "'purpose' cannot be 'tuning.thirds'")]
    [InlineData("2027-05-22", "22.5.2027", "22.5.2027", "'until' must be a date")]
    [InlineData("done: 2027-02-16", "done: yes", "yes", "'done' must be a date")]
    [InlineData("strained", "strainde", "strainde", "there is no kind of mark 'strainde' in this choir")]
    [InlineData("bars:", "bar:", "bar", "a need has no 'bar'; did you mean 'bars'?")]
    [InlineData("purpose: tuning.third", "just a word", "just a word", "'a need' must be names with values")]
    public void Each_fault_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Good, right, wrong);
        Expect.OneProblem(Read(source), source, at, words);
    }

    [Theory]
    [InlineData("", "needs 'format'")]
    [InlineData("format: 1\n", "needs 'needs'")]
    [InlineData("format: 1\nneeds: soon\n", "'needs' must be a list")]
    public void A_file_without_its_list_is_told(string source, string words) =>
        Assert.Contains(words, string.Concat(Read(source.Length == 0 ? "needs: []\n" : source).Problems.Select(problem => problem.Message)), StringComparison.Ordinal);

    [Theory]
    [InlineData(null, null, "2027-02-16", true)]
    [InlineData("2027-02-16", null, "2027-02-16", true)]
    [InlineData("2027-02-15", null, "2027-02-16", false)]
    [InlineData(null, "2027-02-01", "2027-02-16", false)]
    public void A_need_is_open_until_its_day_or_until_it_is_done(string? until, string? done, string day, bool isOpen) => Assert.Equal(
        isOpen,
        new ChoirNeed { Who = "everyone", Until = Day(until), Done = Day(done) }.IsOpenOn(Day(day)!.Value));

    [Fact]
    public void A_need_may_concern_a_part_a_group_or_everyone()
    {
        Assert.Equal(["soprano"], Parts("soprano"));
        Assert.Equal(["bass"], Parts("men"));
        Assert.Equal(["soprano", "bass"], Parts("everyone"));
    }

    private static IEnumerable<string> Parts(string who) => new ChoirNeed { Who = who }.PartsOf(Choir.Parts).Select(part => part.Id);

    private static DateOnly? Day(string? text) => text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd");

    private static FileRead<IReadOnlyList<ChoirNeed>> Read(string source) => NeedsFile.Read("needs.yaml", Expect.Bytes(source), Choir);
}
