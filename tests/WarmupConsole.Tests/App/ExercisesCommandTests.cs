using System.Text.Json;
using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public sealed class ExercisesCommandTests : IDisposable
{
    private readonly ToolRun tool = new();

    public void Dispose() => tool.Dispose();

    [Fact]
    public void The_list_holds_the_catalogue_and_the_choirs_own_by_stage()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "list", "--json"));
        JsonElement[] all = [.. JsonDocument.Parse(tool.Output).RootElement.GetProperty("exercises").EnumerateArray()];
        Assert.Contains(all, exercise => exercise.GetProperty("id").GetString() == "five-note-scale");
        Assert.Contains(all, exercise => exercise.GetProperty("id").GetString() == "ferry-crossing");
        Assert.Equal("body", all[0].GetProperty("stage").GetString());
        Assert.Equal("settling", all[^1].GetProperty("stage").GetString());

        tool.Call("exercises", "list");
        Assert.Equal(all.Length, tool.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Theory]
    [InlineData("--stage", "lip-trill", "stage", "lip-trill")]
    [InlineData("--stage", "body", "stage", "body")]
    [InlineData("--purpose", "ensemble.canon", "purposes", "ensemble.canon")]
    [InlineData("--purpose", "ensemble", "purposes", "ensemble.")]
    public void The_list_may_be_narrowed(string option, string value, string field, string holds)
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "list", option, value, "--json"));
        JsonElement[] found = [.. JsonDocument.Parse(tool.Output).RootElement.GetProperty("exercises").EnumerateArray()];
        Assert.NotEmpty(found);
        Assert.All(found, exercise => Assert.Contains(holds, exercise.GetProperty(field).GetRawText(), StringComparison.Ordinal));
    }

    [Fact]
    public void As_json_an_exercise_holds_every_field_of_its_file()
    {
        JsonElement sung = Shown("five-note-canon");
        Assert.Equal(("sung", "major", "legato"), (Text(sung, "stage"), Text(sung, "mode"), Text(sung, "articulation")));
        Assert.True(sung.GetProperty("voices")[0].GetProperty("offset").GetDouble() > 0);
        Assert.All((string[])["pattern", "syllables", "harmony", "instruction", "listen"], field => Assert.NotEmpty(Text(sung, field)!));
        Assert.Equal((0, JsonValueKind.Null), (sung.GetProperty("phases").GetArrayLength(), sung.GetProperty("rounds").ValueKind));
        JsonElement counted = Shown("counted-breath");
        Assert.Equal("in", Text(counted.GetProperty("phases")[0], "do"));
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (counted.GetProperty("pattern").ValueKind, counted.GetProperty("demands").ValueKind));
        Assert.Contains("sits down", Text(counted, "caution")!, StringComparison.Ordinal);
        Assert.True(counted.GetProperty("tempo").GetProperty("from").GetDouble() <= counted.GetProperty("tempo").GetProperty("default").GetDouble());
    }

    [Fact]
    public void Words_are_found_whatever_their_case_and_all_of_them_must_stand_there()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "find", "FERRY", "oars"));
        Assert.StartsWith("ferry-crossing  sung       Ferry crossing  tuning.scale, ", tool.Output, StringComparison.Ordinal);
        Assert.Single(tool.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries));

        tool.Call("exercises", "find", "ferry", "submarine");
        Assert.Equal(AppTexts.NoExercises + "\n", tool.Output);
    }

    [Fact]
    public void One_exercise_is_shown_with_what_it_asks_of_the_voice()
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "show", "ferry-crossing"));
        Assert.StartsWith("Ferry crossing (ferry-crossing), sung\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  range        9 semitones, 0 to 9 from the tonic; top note 6 on [ɑ]; largest leaps 3 up, 2 down\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  time         2.3 notes a second at most, 2 s on one tone, 7.2 s in one breath\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  vowels       0 1 0 (0 closed, 1 open)\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  complexity   10\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  tempo        92, andante (72 to 108)\n", tool.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("caution", tool.Output, StringComparison.Ordinal);

        tool.Call("exercises", "show", "five-note-canon");
        Assert.Contains("  men          -:4 1 2 3 4 5 4 3 2 1:4  loo/u ", tool.Output, StringComparison.Ordinal);
        Assert.Contains("  complexity   10, 2 lines at once\n", tool.Output, StringComparison.Ordinal);

        tool.Call("exercises", "show", "counted-breath");
        Assert.Contains("  phases       in ", tool.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("a second at most", tool.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_there_is_told_with_what_was_probably_meant()
    {
        Assert.Equal(ExitCodes.BadInput, tool.Call("exercises", "show", "ferry-crosing"));
        Assert.Equal("There is no exercise 'ferry-crosing'. Did you mean ferry-crossing?\n", tool.Errors);
        Assert.Equal(ExitCodes.BadInput, tool.Call("exercises", "list", "--stage", "shouting"));
        Assert.Contains("'shouting' is no stage: write one of body, breathing, ", tool.Errors, StringComparison.Ordinal);
    }

    private JsonElement Shown(string id)
    {
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "show", id, "--json"));
        return JsonDocument.Parse(tool.Output).RootElement.GetProperty("exercises")[0];
    }

    private static string? Text(JsonElement element, string field) => element.GetProperty(field).GetString();
}
