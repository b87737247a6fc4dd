using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Yaml;

public sealed class FileProblemTests
{
    [Fact]
    public void It_is_shown_with_its_line_and_a_mark_under_the_place() => Assert.Equal(
        """
        plans/monday.yaml:7:12: 'tempo' is 320, which is out of range (20 to 300 bpm)
              tempo: 320
                     ^^^
        """.ReplaceLineEndings("\n"),
        new FileProblem("plans/monday.yaml", 7, 12, 3, "'tempo' is 320, which is out of range (20 to 300 bpm)", "    tempo: 320").ToString());

    [Fact]
    public void A_whole_file_has_no_place() =>
        Assert.Equal("choir.yaml: there is none", FileProblem.Whole("choir.yaml", "there is none").ToString());

    [Fact]
    public void Control_characters_never_reach_the_terminal()
    {
        FileProblem problem = new("a\u001b.yaml", 1, 4, 1, "what \u0007 is", "a: \u001b[2J\t\u202Eevil");
        Assert.DoesNotContain(problem.ToString().Replace("\n", "", StringComparison.Ordinal), Printable.IsForbidden);
    }

    [Fact]
    public void A_very_long_line_is_shown_around_the_place()
    {
        FileProblem problem = new("f", 1, 5001, 4, "bad", new string('x', 5000) + "here" + new string('y', 5000));
        string[] lines = problem.ToString().Split('\n');
        Assert.Equal("here", lines[1].Substring(lines[2].IndexOf('^', StringComparison.Ordinal), 4));
        Assert.True(lines[1].Length < 200);
    }

    [Theory]
    [InlineData("temop", "tempo")]
    [InlineData("Tempo", "tempo")]
    [InlineData("becuase", "because")]
    public void The_nearest_name_is_found(string word, string meant) =>
        Assert.Equal(meant, Nearest.To(word, ["tempo", "because", "exercise", "talk"])[0]);

    [Fact]
    public void Nothing_is_offered_for_a_word_unlike_all() => Assert.Empty(Nearest.To("volume", ["tempo", "because", "talk"]));
}
