using WarmupConsole.App;
using WarmupConsole.Tests.Storage.MusicXml;

namespace WarmupConsole.Tests.App;

public sealed class ScoreMapCommandTests : IDisposable
{
    private static readonly string Elgar = Path.Combine(ScoreTable.Folder, "cc0", "elgar-to-her_satb-grace.mxl");
    private readonly ToolRun tool = new();

    private string Written => tool.PathOf("scores/elgar-to-her_satb-grace.yaml");

    public void Dispose() => tool.Dispose();

    [Fact]
    public void Names_are_known_and_the_piano_is_left_out()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("score", "map", Elgar, "--yes"));
        Assert.Equal(
            """
            # Which part of the choir sings which line of the score; 'none' is left out.
            format: 1
            lines:
              - {score: P1, name: Soprano, part: soprano}
              - {score: P2, name: Alto, part: alto}
              - {score: P3, name: Tenor, part: tenor}
              - {score: P4, name: Bass, part: bass}
              - {score: P5, name: Piano for practice only, part: none}

            """,
            File.ReadAllText(Written));
        Assert.Contains("left out: accompaniment", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_confirmed_is_never_overwritten()
    {
        tool.Call("score", "map", Elgar, "--yes");
        string before = File.ReadAllText(Written);
        Assert.Equal(ExitCodes.BadInput, tool.Call("score", "map", Elgar, "--yes", "--part", "Alto=tenor"));
        Assert.Contains("confirmed before and is not overwritten", tool.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Written));
    }

    [Fact]
    public void Without_anyone_to_answer_nothing_is_kept_unasked()
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("score", "map", Elgar));
        Assert.Contains("--yes", tool.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Written));
    }

    [Theory]
    [InlineData("the score has no part 'Violin'", "Violin=alto")]
    [InlineData("there is no part 'altoes' in this choir", "Alto=altoes")]
    [InlineData("is no 'score part=choir part'", "Alto")]
    public void What_cannot_be_meant_is_told(string words, string change)
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("score", "map", Elgar, "--yes", "--part", change));
        Assert.Contains(words, tool.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Written));
    }

    [Fact]
    public void The_director_confirms_or_corrects()
    {
        using Desk desk = new("Alto=none", "Nobody=alto", "");
        desk.Write(File.ReadAllText(Path.Combine(CommandRun.Demo, "choir.yaml")).Replace("demo: true", "demo: false", StringComparison.Ordinal), "choir.yaml");
        Assert.Equal(ExitCodes.Ok, desk.Run("score", "map", Elgar));
        string kept = File.ReadAllText(desk.PathOf("scores", "elgar-to-her_satb-grace.yaml"));
        Assert.Contains("{score: P2, name: Alto, part: none}", kept, StringComparison.Ordinal);
        Assert.Contains("the score has no part 'Nobody'", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_leaves_writes_nothing()
    {
        using Desk desk = new("q");
        desk.Write(File.ReadAllText(Path.Combine(CommandRun.Demo, "choir.yaml")).Replace("demo: true", "demo: false", StringComparison.Ordinal), "choir.yaml");
        Assert.Equal(ExitCodes.Ok, desk.Run("score", "map", Elgar));
        Assert.False(Directory.Exists(desk.PathOf("scores")));
    }

    [Fact]
    public void A_confirmed_map_is_used_and_its_mistakes_have_a_place()
    {
        tool.Put("scores/elgar-to-her_satb-grace.yaml", "format: 1\nlines:\n  - {score: P2, part: tenor}\n  - {score: P9, part: alto}\n  - {score: P1, voice: 7, part: nobody}\n");
        Assert.Equal(ExitCodes.BadInput, tool.Call("score", "look", Elgar));
        Assert.Contains("scores/elgar-to-her_satb-grace.yaml:4:13: the score has no part 'P9'".Replace('/', Path.DirectorySeparatorChar), tool.Errors, StringComparison.Ordinal);
        Assert.Contains(":5:33: there is no part or group 'nobody'", tool.Errors, StringComparison.Ordinal);
        Assert.Contains(":5:24: this part of the score has one voice only", tool.Errors, StringComparison.Ordinal);

        tool.Put("scores/elgar-to-her_satb-grace.yaml", "format: 1\nlines:\n  - {score: P2, part: tenor}\n");
        Assert.Equal(ExitCodes.Ok, tool.Call("score", "look", Elgar));
        Assert.Contains("Alto: Tenor, comfortable", tool.Output, StringComparison.Ordinal);
        Assert.Contains("Soprano: Soprano, comfortable", tool.Output, StringComparison.Ordinal);
    }
}
