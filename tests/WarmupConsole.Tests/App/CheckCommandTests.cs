using System.Text.Json;
using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public sealed class CheckCommandTests : IDisposable
{
    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Theory]
    [InlineData("plans/2027-02-02.yaml")]
    [InlineData("plans/2027-02-09.yaml")]
    [InlineData("plans/2027-02-16.yaml")]
    public void An_ordinary_good_plan_has_no_errors_no_warnings_and_few_hints(string plan)
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("check", tool.PathOf(plan), "--json"));
        JsonElement report = JsonDocument.Parse(tool.Output).RootElement;
        Assert.Equal((0, 0), (report.GetProperty("errors").GetInt32(), report.GetProperty("warnings").GetInt32()));
        Assert.True(report.GetProperty("hints").GetInt32() <= 3, tool.Output);
    }

    [Theory]
    [InlineData("2027-02-09")]
    [InlineData("2027-02-09.yaml")]
    public void A_plan_may_be_named_by_its_day(string name)
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("check", name, "--choir", tool.PathOf("")));
        Assert.Contains(" of 15:00; errors: 0", tool.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, tool.Call("check", "2027-02-10", "--choir", tool.PathOf("")));
        Assert.Contains(AppTexts.NoSuchPlan, tool.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_in_a_choir_that_cannot_be_read_is_answered_by_what_is_wrong_with_the_choir()
    {
        string choir = tool.Put("choir.yaml", "format: 1\nname: [");
        Assert.Equal(ExitCodes.BadInput, tool.Call("check", "2027-02-09", "--choir", tool.PathOf("")));
        Assert.Contains(choir, tool.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain(AppTexts.NoSuchPlan, tool.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_built_in_quarter_of_an_hour_is_one_too()
    {
        Directory.Delete(tool.PathOf("plans"), recursive: true);
        Assert.Equal(ExitCodes.Ok, tool.Call("check"));
        Assert.Contains("errors: 0, warnings: 0, hints: ", tool.Output, StringComparison.Ordinal);
        Assert.True(tool.Output.Split("hint (").Length <= 4, tool.Output);
    }

    [Fact]
    public void Each_remark_stands_at_its_place_in_the_file()
    {
        string path = Bad("");
        Assert.Equal(ExitCodes.Findings, tool.Call("check", path));
        string[] lines = tool.Output.Split('\n');
        Assert.StartsWith($"{path}:4:5: error (breath-first): Step 1 (", lines[0], StringComparison.Ordinal);
        Assert.Contains(lines, line => line.StartsWith($"{path}:2:1: warning (planned-length): ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith($"{path}:8:5: hint (talk-left-out): ", StringComparison.Ordinal));
        Assert.Contains("comfortable  extreme", tool.Output, StringComparison.Ordinal);
        Assert.Contains("Soprano", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_that_is_off_is_shown_with_its_reason_and_is_no_finding()
    {
        string path = Bad("off: [{rule: breath-first, because: breath was done outside}, {rule: no-keys, because: just so}]\n");
        Assert.Equal(ExitCodes.Ok, tool.Call("check", path));
        Assert.Contains("off (breath-first): breath was done outside (it would say one thing)\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("off (no-keys): just so (it would find nothing)\n", tool.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("error (", tool.Output, StringComparison.Ordinal);

        tool.Call("check", path, "--json");
        JsonElement remark = JsonDocument.Parse(tool.Output).RootElement.GetProperty("remarks").EnumerateArray().Single(found => found.GetProperty("rule").GetString() == "breath-first");
        Assert.Equal(("breath was done outside", 1, 5), (remark.GetProperty("off_because").GetString(), remark.GetProperty("step").GetInt32(), remark.GetProperty("line").GetInt32()));
    }

    [Fact]
    public void Earlier_plans_are_compared_and_one_that_cannot_be_read_is_told()
    {
        tool.Put("plans/2027-02-23.yaml", File.ReadAllText(tool.PathOf("plans/2027-02-16.yaml")).Replace("2027-02-16", "2027-02-23", StringComparison.Ordinal));
        tool.Put("plans/2027-02-10.yaml", "format: 1\nsteps: []\n");
        Assert.Equal(ExitCodes.Ok, tool.Call("check", tool.PathOf("plans/2027-02-23.yaml")));
        Assert.Contains("hint (same-plan): All exercises are those of the last plan.", tool.Output, StringComparison.Ordinal);
        Assert.Contains("An earlier plan is left out of the comparison: ", tool.Errors, StringComparison.Ordinal);

        tool.Call("check", tool.PathOf("plans/2027-02-16.yaml"));
        Assert.DoesNotContain("same-plan", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_rehearsal_is_checked_too()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("check", tool.Put("plans/2027-05-11.yaml", "format: 1\ndate: 2027-05-11\nbare: {told: false, because: as on the day}\n")));
        Assert.Contains(":3:1: warning (bare-rehearsal): The singers are not told.", tool.Output, StringComparison.Ordinal);
    }

    /// <summary>Sings before breathing, much too short, without talk in its second step.</summary>
    private string Bad(string line) => tool.Put(
        "plans/2027-03-02.yaml",
        $"format: 1\nminutes: 15\n{line}steps:\n  - exercise: one-note-hum\n    keys: {{most: 2}}\n  - exercise: counted-breath\n    rounds: 1\n    talk: 0\n");
}
