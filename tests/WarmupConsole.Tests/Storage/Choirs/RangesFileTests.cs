using CsCheck;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Choirs;

public sealed class RangesFileTests : IDisposable
{
    private const string Alto = """{"format": 1, "from": "2027-01-12", "part": "alto", "extreme": "G3-D5", "comfortable": "A3-C5"}""";
    private const string Bass = """{"format": 1, "from": "2027-02-09", "part": "bass", "extreme": "E2-C4", "comfortable": "G2-Bb3"}""";

    private static readonly Gen<MeasuredRange> AnyRange =
        from low in Gen.Int[30, 50]
        from steps in Gen.Int[0, 12].Array[3]
        from day in Gen.Int[0, 20_000]
        select new MeasuredRange(
            "part-" + low,
            DateOnly.FromDayNumber(730_000 + day),
            new(new(At(low), At(low + steps.Sum())), new(At(low + steps[0]), At(low + steps[0] + steps[1]))));

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Lines_are_read_in_their_order()
    {
        MeasuredRange[] read = [.. RangesFile.Read("ranges.jsonl", Expect.Bytes($"{Alto}\n\n{Bass}\n")).Value!];
        Assert.Equal([("alto", new DateOnly(2027, 1, 12)), ("bass", new DateOnly(2027, 2, 9))], read.Select(range => (range.PartId, range.From)));
        Assert.Equal("G2-Bb3", PitchRangeText.Write(read[1].Range.Comfortable));
    }

    [Theory]
    [InlineData("\"format\": 1", "\"format\": 2", "2, \"from", "the file has format 2")]
    [InlineData("\"part\": \"alto\", ", "", "{", "a line of ranges.jsonl needs 'part'")]
    [InlineData("\"part\"", "\"parts\"", "\"parts\"", "did you mean 'part'?")]
    [InlineData("alto", "Alto", "\"Alto\"", "lower-case")]
    [InlineData("2027-01-12", "2027-13-12", "\"2027-13-12\"", "'from' must be a date")]
    [InlineData("G3-D5", "D5-G3", "D5-G3", "lies above the highest note")]
    [InlineData("A3-C5", "F3-C5", "\"F3-C5\"", "lies partly outside the extreme range G3-D5")]
    public void What_is_wrong_with_a_line_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string bent = Samples.Bend(Alto, right, wrong);
        string source = $"{Bass}\n{bent}\n{Bass}\n";
        FileProblem problem = RangesFile.Read("ranges.jsonl", Expect.Bytes(source)).Problems.First(problem => problem.Message.Contains(words, StringComparison.Ordinal));
        Assert.Equal((2, bent.IndexOf(at, StringComparison.Ordinal) + 1, bent), (problem.Line, problem.Column, problem.SourceLine));
    }

    [Fact]
    public void A_line_that_was_cut_off_is_told()
    {
        FileProblem problem = Assert.Single(RangesFile.Read("ranges.jsonl", Expect.Bytes($"{Bass}\n{Alto[..60]}")).Problems);
        Assert.Equal(2, problem.Line);
        Assert.Contains("cannot be read as YAML", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once() =>
        Assert.Equal([1, 1, 3], RangesFile.Read("f", Expect.Bytes($"{{\"format\": 1, \"part\": \"a\", \"from\": \"x\", \"extreme\": \"y\", \"comfortable\": \"C4-D4\"}}\n{Alto}\nnonsense\n")).Problems.Select(problem => problem.Line));

    [Fact]
    public void A_line_is_added_behind_the_others_which_stay_as_they_are()
    {
        string path = folder.Write(Alto + "\n", "choir", "ranges.jsonl");
        Assert.Null(RangesFile.Append(path, RangesFile.Read("f", Expect.Bytes(Bass)).Value![0]));
        Assert.Equal($"{Alto}\n{Bass}\n", File.ReadAllText(path));
    }

    [Fact]
    public void The_first_line_makes_the_file_and_its_folder()
    {
        string path = folder.PathOf("demo", "choir", "ranges.jsonl");
        Assert.Empty(RangesFile.Load(path).Value!);
        Assert.Null(RangesFile.Append(path, RangesFile.Read("f", Expect.Bytes(Alto)).Value![0]));
        Assert.Equal("alto", Assert.Single(RangesFile.Load(path).Value!).PartId);
    }

    [Fact]
    public void Where_nothing_can_be_written_the_reason_is_told()
    {
        string inTheWay = folder.Write("", "file");
        Assert.Contains("cannot be written", RangesFile.Append(Path.Combine(inTheWay, "ranges.jsonl"), RangesFile.Read("f", Expect.Bytes(Alto)).Value![0]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_reads_back() => AnyRange.Sample(range =>
        Assert.Equal(range, Assert.Single(RangesFile.Read("f", Expect.Bytes(RangesFile.Write(range))).Value!)));

    private static Pitch At(int midi) => KeySpelling.TonicFor(midi, Mode.Major);
}
