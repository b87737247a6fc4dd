using System.Text.Json;
using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public sealed class NeedCommandTests : IDisposable
{
    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Fact]
    public void Needs_are_added_listed_and_done()
    {
        Assert.Equal(ExitCodes.Ok, Add("--part", "soprano", "--pitch", "F#5", "--piece", "Harbour hymn", "--bars", "12-15", "--until", "2027-05-22"));
        Assert.Equal("1. soprano: F♯5, for Harbour hymn, bars 12-15, until 22 May 2027\n", tool.Output);
        Assert.Equal(ExitCodes.Ok, Add("--purpose", "tuning.third"));
        Assert.Equal("2. everyone: leaps of a third\n", tool.Output);

        Assert.Equal(ExitCodes.Ok, tool.Call("need", "done", "1"));
        Assert.Equal(ExitCodes.Ok, tool.Call("need", "list"));
        Assert.Equal("2. everyone: leaps of a third\n", tool.Output);
        tool.Call("need", "list", "--all", "--json");
        JsonElement first = JsonDocument.Parse(tool.Output).RootElement.GetProperty("needs")[0];
        Assert.Equal(("F#5", "2027-02-16"), (first.GetProperty("pitch").GetString(), first.GetProperty("done").GetString()));
        Assert.Equal(ExitCodes.BadInput, tool.Call("need", "done", "1"));
        Assert.Contains("need 1 is done already", tool.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("format: 1\nneeds:\n  # from the autumn\n  - part: alto   # all of them\n    pitch: E4\n", 2)]
    [InlineData("format: 1\nneeds:\n- part: alto   # all of them\n  pitch: E4\n", 1)]
    [InlineData("format: 1\nneeds:\n    - {part: alto, pitch: E4} # here\n", 1)]
    [InlineData("# ours\nformat: 1\nneeds:\n  -\n    part: alto\n    pitch: E4", 1)]
    public void Comments_and_all_other_lines_stay_as_they_are(string text, int comments)
    {
        tool.Put("needs.yaml", text);
        Assert.Equal(ExitCodes.Ok, Add("--pitch", "C4"));
        Assert.StartsWith(text.TrimEnd() + "\n", Text, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, tool.Call("need", "done", "1"));
        Assert.Equal(ExitCodes.Ok, tool.Call("need", "done", "2"));
        Assert.Equal(comments, text.Split('\n').Count(line => line.Contains('#', StringComparison.Ordinal)));
        Assert.All(text.Split('\n').Where(line => line.Contains('#', StringComparison.Ordinal)), line => Assert.Contains(line[line.IndexOf('#', StringComparison.Ordinal)..], Text, StringComparison.Ordinal));
        Assert.Equal(2, Text.Split("done: 2027-02-16").Length - 1);
        tool.Call("need", "list");
        Assert.Equal(AppTexts.NoNeeds + "\n", tool.Output);
    }

    [Fact]
    public void An_empty_list_takes_its_first_need()
    {
        tool.Put("needs.yaml", "format: 1\nneeds: []\n");
        Assert.Equal(ExitCodes.Ok, Add("--region", "C5-F5", "--part", "women"));
        Assert.Equal("1. women: C5–F5\n", tool.Output);
    }

    [Theory]
    [InlineData("needs: [{part: alto, pitch: E4}]\nformat: 1\n")]
    [InlineData("needs:\n  - {part: alto, pitch: E4}\nformat: 1\n")]
    [InlineData("needs: []\nformat: 1\n")]
    public void A_list_that_is_not_last_is_left_to_the_director(string text)
    {
        tool.Put("needs.yaml", text);
        Assert.Equal(ExitCodes.BadInput, Add("--pitch", "C4"));
        Assert.Contains("add it by hand", tool.Errors, StringComparison.Ordinal);
        Assert.Equal(text, Text);
    }

    [Theory]
    [InlineData("--pitch: 'pitch' must be a pitch", "--pitch", "H4")]
    [InlineData("--part: there is no part or group 'altoes'", "--part", "altoes", "--pitch", "C4")]
    [InlineData("--until: 'until' must be a date", "--pitch", "C4", "--until", "May")]
    [InlineData("exactly one of pitch, region and purpose", "--part", "alto")]
    [InlineData("exactly one of pitch, region and purpose", "--pitch", "C4", "--region", "C4-E4")]
    public void What_may_not_be_is_told_and_nothing_is_written(string words, params string[] options)
    {
        Assert.Equal(ExitCodes.BadInput, Add(options));
        Assert.Contains(words, tool.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(tool.PathOf("needs.yaml")));
    }

    [Fact]
    public void Numbers_that_are_not_there_are_told()
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("need", "done", "1"));
        Assert.Contains("there are no needs yet", tool.Errors, StringComparison.Ordinal);
        Add("--pitch", "C4");
        Assert.Equal(ExitCodes.BadInput, tool.Call("need", "done", "2"));
        Assert.Contains("the numbers go from 1 to 1", tool.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_plan_answers_a_pitch_and_says_what_nothing_serves()
    {
        Add("--part", "alto", "--pitch", "B4", "--piece", "Harbour hymn");
        Add("--part", "bass", "--region", "F2-D4");
        Assert.Equal(ExitCodes.Ok, tool.Call("plan", "next", "--date", "2027-02-23"));
        Assert.Contains("asked for, reached here from below and from above: alto: B4, for Harbour hymn", File.ReadAllText(tool.PathOf("plans/2027-02-23.yaml")), StringComparison.Ordinal);
        Assert.Contains("bass: F2–D4: nothing in this plan serves it", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_demo_choir_is_not_written_to()
    {
        tool.Put("choir.yaml", File.ReadAllText(tool.PathOf("choir.yaml")).Replace("demo: false", "demo: true", StringComparison.Ordinal));
        tool.Put("needs.yaml", "format: 1\nneeds:\n  - pitch: E4\n");
        Add("--pitch", "C4");
        Assert.Equal("format: 1\nneeds:\n  - pitch: E4\n", Text);
        tool.Call("need", "list");
        Assert.Equal("1. everyone: E4\n2. everyone: C4\n", tool.Output);
    }

    private string Text => File.ReadAllText(tool.PathOf("needs.yaml"));

    private int Add(params string[] options) => tool.Call(["need", "add", .. options]);
}
