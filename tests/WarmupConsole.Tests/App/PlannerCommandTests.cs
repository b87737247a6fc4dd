using System.Text.Json;
using WarmupConsole.App;
using WarmupConsole.App.Reports;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Storage.Plans;

namespace WarmupConsole.Tests.App;

/// <summary><c>warmup plan next</c>, <c>warmup plan explain</c> and <c>warmup season</c> as typed.</summary>
public sealed class PlannerCommandTests : IDisposable
{
    private readonly ToolRun _tool = new();

    public void Dispose() => _tool.Dispose();

    [Fact]
    public void The_next_plan_of_the_demo_answers_its_findings_and_passes_the_check()
    {
        using CommandRun run = new();
        Assert.Equal(ExitCodes.Ok, run.Type("plan", "next", "--choir", CommandRun.Demo));
        string path = run.Folder.PathOf("settings", "demo", "plans-demo", "plans", "2027-02-16.yaml");
        Plan plan = PlanFile.Read(path, File.ReadAllBytes(path)).Value!;
        Assert.Contains(plan.Steps, step => step.Answers.Any(answer => answer.StartsWith("alto-flat-", StringComparison.Ordinal)));
        Assert.All(plan.Steps, step => Assert.True(step.Value is not null && step.Because.Count > 0));
        Assert.Equal(ExitCodes.Ok, run.Type("check", path, "--choir", CommandRun.Demo));
        Assert.Contains("errors: 0, warnings: 0", run.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Ok, run.Type("plan", "explain", path, "--choir", CommandRun.Demo));
        Assert.Contains("instead, best: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("alto-flat-", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--minutes is '9': write a whole number from 10 to 30", "--minutes", "9")]
    [InlineData("--minutes is '31': write a whole number from 10 to 30", "--minutes", "31")]
    [InlineData("--minutes is 'long': write a whole number from 10 to 30", "--minutes", "long")]
    [InlineData("--rehearsal is '20': write a whole number from 30 to 300", "--rehearsal", "20")]
    [InlineData("--variant is '0': write a whole number from 1 to 9", "--variant", "0")]
    [InlineData("--focus: 'swimming' is no finding, part, group or purpose here: write one of soprano, alto,", "--focus", "swimming")]
    [InlineData("--tonight: 'the moon' is not understood", "--tonight", "the moon")]
    public void What_is_out_of_range_or_unknown_is_refused_with_what_is_allowed(string words, params string[] options)
    {
        Assert.Equal(ExitCodes.BadInput, _tool.Call(["plan", "next", "--date", "2027-02-23", .. options]));
        Assert.Contains(words, _tool.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(_tool.PathOf("plans/2027-02-23.yaml")));
    }

    [Fact]
    public void Minutes_rehearsal_focus_tonight_and_variant_are_followed()
    {
        Assert.Equal(ExitCodes.Ok, _tool.Call("plan", "next", "--date", "2027-02-23", "--rehearsal", "96", "--focus", "ensemble", "--tonight", "b 0, s colds", "--variant", "2"));
        Plan plan = PlanFile.Read("p", File.ReadAllBytes(_tool.PathOf("plans/2027-02-23.yaml"))).Value!;
        Assert.Equal(12, plan.Minutes);
        Assert.Equal(ExitCodes.Ok, _tool.Call("check", _tool.PathOf("plans/2027-02-23.yaml")));
    }

    [Fact]
    public void An_earlier_plan_whose_exercise_is_gone_is_left_out_and_told()
    {
        File.Delete(_tool.PathOf("exercises/own.yaml"));
        Assert.Equal(ExitCodes.Ok, _tool.Call("plan", "next", "--date", "2027-02-23"));
        Assert.Contains("An earlier plan is left out of the comparison: ", _tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_by_hand_is_explained_and_one_without_steps_is_not()
    {
        Assert.Equal(ExitCodes.Ok, _tool.Call("plan", "explain", _tool.PathOf("plans/2027-02-16.yaml"), "--focus", "alto"));
        Assert.Contains("\n 1. ", _tool.Output, StringComparison.Ordinal);
        string bare = _tool.Put("plans/2027-03-02.yaml", "format: 1\nbare: {told: true, because: cold voices}\n");
        Assert.Equal(ExitCodes.BadInput, _tool.Call("plan", "explain", bare));
        Assert.Contains(AppTexts.NothingToExplain, _tool.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 0, "no other exercise fits in its place")]
    [InlineData("Sirens", 7, "instead, best: Sirens (7 less)")]
    [InlineData("Sirens", 0, "instead, as good: Sirens")]
    [InlineData("Sirens", -7, "instead, better: Sirens (7 more)")]
    public void What_could_stand_in_place_of_a_step_is_told(string other, long loss, string words)
    {
        ExplainedStep step = new("Long tones", 40, [(40, "sustained tones")], other, loss);
        string text = ExplanationText.Write(new() { Steps = [] }, new([step], 40, 47, SeasonTarget.On(new(2027, 2, 16), [])));
        Assert.EndsWith($"\n 1. Long tones: 40\n      +40  sustained tones\n           {words}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_season_is_a_calendar_with_the_card_where_a_rehearsal_could_be_bare()
    {
        Assert.Equal(ExitCodes.Ok, _tool.Call("season"));
        Assert.Contains("Tue 2027-02-16  --- today ---", _tool.Output, StringComparison.Ordinal);
        Assert.Contains("Sat 2027-05-22  concert", _tool.Output, StringComparison.Ordinal);
        Assert.Contains(AppTexts.BareCard[1], _tool.Output, StringComparison.Ordinal);

        Assert.Equal(ExitCodes.Ok, _tool.Call("season", "--json"));
        JsonElement[] days = [.. JsonDocument.Parse(_tool.Output).RootElement.GetProperty("days").EnumerateArray()];
        Assert.Equal(2, days.Count(day => day.GetProperty("kind").GetString() == "bare-proposed"));
        Assert.Equal("2027-05-22", days[^1].GetProperty("date").GetString());
    }

    [Fact]
    public void Files_that_cannot_be_read_are_told_and_the_season_goes_on()
    {
        _tool.Put("plans/2027-03-02.yaml", "format: 1\nsteps: [{exercise: zzz}]\n");
        _tool.Put("sessions/2027-02-09T19-30-00.jsonl", "not a log\n");
        Assert.Equal(ExitCodes.Ok, _tool.Call("season"));
        Assert.Equal(2, _tool.Errors.Split('\n').Count(line => line.StartsWith("Left out of the calendar: ", StringComparison.Ordinal)));
    }
}
