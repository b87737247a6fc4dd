using System.Text.Json;
using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public sealed class KeysCommandTests : IDisposable
{
    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Fact]
    public void One_exercise_shows_its_keys_reasons_announcements_and_the_range_board()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("keys", "--exercise", "five-note-scale", "--start", "C4", "--shape", "up", "--limit", "soprano", "--tolerance", "0"));
        string[] lines = tool.Output.Split('\n');
        Assert.StartsWith("Five-note scale: keys 11, announcements ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("   C4   Soprano C4–G4  Alto C4–G4  Tenor C3–G3  Bass C3–G3", lines[1], StringComparison.Ordinal);
        Assert.Contains("  > In G♭ the altos rest", lines[6], StringComparison.Ordinal);
        Assert.Contains("Stops at B♭: in B the sopranos would need F♯5", tool.Output, StringComparison.Ordinal);
        Assert.Contains("    Soprano Alto    Tenor   Bass\n", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_board_shows_the_range_beside_what_is_sung()
    {
        tool.Call("keys", "--exercise", "five-note-scale", "--most", "1");
        string[] board = [.. tool.Output.Split('\n').SkipWhile(line => !line.Contains('░', StringComparison.Ordinal)).TakeWhile(line => !line.Contains("Soprano", StringComparison.Ordinal))];
        Assert.All(board, row => Assert.True(row.Length <= 4 + (4 * 8)));
        Assert.Equal(4, board.Count(row => row.Length > 7 && row.PadRight(12)[4..12].Contains('█', StringComparison.Ordinal)));
        Assert.StartsWith("C4  ▒▒▒███  ▒▒▒███  ▒▒▒     ▒▒▒", board.Single(row => row.StartsWith("C4", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain(board, row => row.StartsWith("    ░░░███", StringComparison.Ordinal));
    }

    [Fact]
    public void As_json_it_holds_who_sings_and_two_ladders_where_few_keys_fit()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("keys", "--exercise", "octave-leap", "--by", "2", "--octave", "--json"));
        JsonElement step = JsonDocument.Parse(tool.Output).RootElement.GetProperty("steps")[0];
        Assert.Equal("octave-leap", step.GetProperty("exercise").GetString());
        Assert.Equal(2, step.GetProperty("two_ladders").GetArrayLength());
        Assert.Contains(step.GetProperty("reasons").EnumerateArray(), reason => reason.GetString()!.Contains("two ladders would serve", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--start", "H4", "--start: 'start' must be a pitch")]
    [InlineData("--shape", "round", "--shape: 'shape' cannot be 'round'")]
    [InlineData("--limit", "altoes", "--limit: there is no part or group 'altoes'")]
    [InlineData("--reach", "101", "--reach: 'reach' is 101, which is out of range (0 to 100 per cent)")]
    [InlineData("--tolerance", "-1", "--tolerance: 'tolerance' is -1, which is out of range (0 to 12 semitones)")]
    [InlineData("--by", "13", "--by: 'by' is 13, which is out of range (1 to 12 semitones)")]
    [InlineData("--most", "0", "--most: 'most' is 0, which is out of range (1 to 24 keys)")]
    public void A_value_that_may_not_be_is_told_by_its_option(string option, string value, string words)
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("keys", "--exercise", "five-note-scale", option, value));
        Assert.Contains(words, tool.Errors, StringComparison.Ordinal);
        Assert.Empty(tool.Output);
    }

    [Fact]
    public void An_exercise_that_is_not_there_is_told_with_what_was_probably_meant()
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("keys", "--exercise", "five-note-scal"));
        Assert.Contains("--exercise: there is no exercise 'five-note-scal'; did you mean one of five-note-scale, ", tool.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_and_an_exercise_or_keys_without_an_exercise_are_refused()
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("keys", tool.PathOf("plans/2027-02-16.yaml"), "--exercise", "five-note-scale"));
        Assert.Equal(ExitCodes.BadInput, tool.Call("keys", "--start", "C4"));
        Assert.Contains("--exercise ID", tool.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_plan_ends_with_its_time_and_one_board()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("keys", tool.PathOf("plans/2027-02-02.yaml")));
        Assert.Equal(2, tool.Output.Split("Left: ").Length);
        Assert.Matches(@"Together \d+:\d\d of 11:00\n$", tool.Output);
    }
}
