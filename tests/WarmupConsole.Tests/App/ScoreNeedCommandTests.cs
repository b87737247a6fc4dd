using WarmupConsole.App;
using WarmupConsole.Tests.Storage.MusicXml;

namespace WarmupConsole.Tests.App;

public sealed class ScoreNeedCommandTests : IDisposable
{
    private static readonly string Elgar = Path.Combine(ScoreTable.Folder, "cc0", "elgar-to-her_satb-grace.mxl");
    private readonly ToolRun tool = new();

    private string Needs => File.ReadAllText(tool.PathOf("needs.yaml"));

    public void Dispose() => tool.Dispose();

    [Fact]
    public void A_passage_becomes_needs_and_comments_stay()
    {
        tool.Put("needs.yaml", "# ours\nformat: 1\nneeds:\n  - {part: bass, pitch: E2} # old\n");
        Assert.Equal(ExitCodes.Ok, Need("--part", "alto", "--passage", "1", "--until", "2027-05-22"));
        Assert.StartsWith("# ours\nformat: 1\nneeds:\n  - {part: bass, pitch: E2} # old\n", Needs, StringComparison.Ordinal);
        Assert.Contains("- {part: alto, pitch: E5, piece: To her beneath whose stedfast star, bars: \"60\", until: \"2027-05-22\"}", Needs, StringComparison.Ordinal);
        Assert.Contains("purpose: tuning.octave", Needs, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, tool.Call("need", "list"));
        Assert.Contains("alto: E5, for To her beneath whose stedfast star, bars 60", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_there_already_is_not_added_again()
    {
        Need("--part", "alto", "--passage", "1");
        string once = Needs;
        Assert.Equal(ExitCodes.Ok, Need("--part", "alto", "--bars", "60"));
        Assert.Contains("already there", tool.Output, StringComparison.Ordinal);
        Assert.Equal(once, Needs);
    }

    [Fact]
    public void Bars_without_anything_hard_give_the_region_of_their_notes()
    {
        Assert.Equal(ExitCodes.Ok, Need("--part", "tenor", "--bars", "2"));
        Assert.Contains("region: ", Needs, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choir_that_names_notes_in_german_keeps_the_pitch_that_is_meant()
    {
        string choir = File.ReadAllText(tool.PathOf("choir.yaml"));
        tool.Put("choir.yaml", choir.Replace("rehearsal: 120", "rehearsal: 120\nnotes: german", StringComparison.Ordinal));
        Assert.Equal(ExitCodes.Ok, Need("--part", "alto", "--bars", "79-82"));
        Assert.Contains("pitch: B4", Needs, StringComparison.Ordinal);
        Assert.Contains("alto: h1", tool.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("one of them", "--part", "alto")]
    [InlineData("one of them", "--part", "alto", "--bars", "3", "--passage", "1")]
    [InlineData("the score has no part 'harp'", "--part", "harp", "--bars", "3")]
    [InlineData("'900' names no bars of this score, which go from 0 to 103", "--part", "alto", "--bars", "900")]
    [InlineData("'9-3' names no bars", "--part", "alto", "--bars", "9-3")]
    [InlineData("there is no passage 0 of this part", "--part", "alto", "--passage", "0")]
    [InlineData("--until: 'until' must be a date", "--part", "alto", "--passage", "1", "--until", "May")]
    public void What_may_not_be_is_told_and_nothing_is_written(string words, params string[] options)
    {
        Assert.Equal(ExitCodes.BadInput, Need(options));
        Assert.Contains(words, tool.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(tool.PathOf("needs.yaml")));
    }

    private int Need(params string[] options) => tool.Call(["score", "need", Elgar, .. options]);
}
