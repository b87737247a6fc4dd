using WarmupConsole.App;
using WarmupConsole.Tests.Storage.MusicXml;

namespace WarmupConsole.Tests.App;

public sealed class ScoreDrillCommandTests : IDisposable
{
    private const string Id = "to-her-beneath-whose-stedfast-star-alto-bars-14-15";
    private static readonly string Elgar = Path.Combine(ScoreTable.Folder, "cc0", "elgar-to-her_satb-grace.mxl");
    private readonly ToolRun tool = new();

    private string Written => tool.PathOf($"exercises/{Id}.yaml");

    public void Dispose() => tool.Dispose();

    [Fact]
    public void A_drill_is_shown_planned_and_checked_like_any_exercise()
    {
        Assert.Equal(ExitCodes.Ok, Drill("--bars", "14-15"));
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "show", Id));
        Assert.Contains("alto", tool.Output, StringComparison.Ordinal);
        string plan = tool.Put("plans/2027-03-02.yaml", $"format: 1\nsteps:\n  - exercise: {Id}\n");
        Assert.NotEqual(ExitCodes.BadInput, tool.Call("check", plan));
        Assert.Equal(ExitCodes.Ok, tool.Call("keys", plan));
    }

    [Fact]
    public void Nothing_is_overwritten()
    {
        Drill("--bars", "14-15");
        string before = File.ReadAllText(Written);
        Assert.Equal(ExitCodes.BadInput, Drill("--bars", "14-15", "--simple-rhythm"));
        Assert.Contains("nothing is overwritten", tool.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Written));
        string elsewhere = tool.PathOf("simple.yaml");
        Assert.Equal(ExitCodes.Ok, Drill("--bars", "14-15", "--simple-rhythm", "--out", elsewhere));
        Assert.DoesNotContain(":1/", File.ReadAllText(elsewhere), StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, Drill("--bars", "14-15", "--out", elsewhere));
    }

    [Fact]
    public void Words_come_from_the_score_unless_syllables_are_given()
    {
        Drill("--bars", "14-15");
        Assert.Contains("syllables: ", File.ReadAllText(Written), StringComparison.Ordinal);
        string noh = tool.PathOf("noh.yaml");
        Drill("--bars", "14-15", "--syllables", "noh", "--out", noh);
        Assert.Contains("syllables: noh/o", File.ReadAllText(noh), StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, Drill("--bars", "14-15", "--syllables", "a b c", "--out", tool.PathOf("abc.yaml")));
        Assert.Contains("--syllables: ", tool.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("names no bars", "--bars", "14-900")]
    [InlineData("at most 200 notes and rests", "--bars", "1-101")]
    public void What_cannot_be_a_drill_is_told(string words, params string[] options)
    {
        Assert.Equal(ExitCodes.BadInput, Drill(options));
        Assert.Contains(words, tool.Errors, StringComparison.Ordinal);
    }

    private int Drill(params string[] options) => tool.Call(["score", "drill", Elgar, "--part", "alto", .. options]);
}
