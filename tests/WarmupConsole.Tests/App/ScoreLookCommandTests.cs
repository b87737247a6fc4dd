using System.Text.Json;
using System.Text.RegularExpressions;
using WarmupConsole.App;
using WarmupConsole.Tests.Storage.MusicXml;

namespace WarmupConsole.Tests.App;

public sealed partial class ScoreLookCommandTests : IDisposable
{
    private readonly CommandRun run = new();

    public static TheoryData<string> Files => ScoreTableTests.Files;

    public void Dispose() => run.Dispose();

    /// <summary>The table of ranges.csv, of which accompaniment is left out unless there is nothing else.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void Json_has_the_ranges_of_the_table(string file)
    {
        IReadOnlyDictionary<string, string>[] rows = [.. ScoreTable.Rows("ranges.csv").Where(row => row["file"] == file)];
        if (rows[0]["error"].Length > 0)
        {
            Assert.Equal(ExitCodes.BadInput, Look(file, "--json"));
            Assert.Empty(run.Output);
            Assert.NotEmpty(run.Errors);
            return;
        }

        Assert.Equal(ExitCodes.Ok, Look(file, "--json"));
        IReadOnlyDictionary<string, string>[] sung = [.. rows.Where(row => !row["part_name"].Contains("Piano", StringComparison.Ordinal))];
        JsonElement[] parts = [.. Parts().Where(part => part.GetProperty("voice").ValueKind == JsonValueKind.Null)];
        Assert.Equal(sung.Select(Expected), parts.Select(Found));
    }

    [Fact]
    public void Json_has_the_ranges_of_every_voice()
    {
        foreach (IGrouping<string, IReadOnlyDictionary<string, string>> file in ScoreTable.Rows("ranges-by-voice.csv").Where(row => !row["part_name"].Contains("Piano", StringComparison.Ordinal)).GroupBy(row => row["file"]))
        {
            Look(file.Key, "--json");
            JsonElement[] voices = [.. Parts().Where(part => part.GetProperty("voice").ValueKind == JsonValueKind.String)];
            Assert.Equal(file.Select(row => Expected(row) + " " + row["voice"]), voices.Select(part => Found(part) + " " + part.GetProperty("voice").GetString()));
        }
    }

    [Fact]
    public void The_shape_is_that_of_the_documentation()
    {
        Look("cc0/elgar-to-her_satb-grace.mxl", "--json");
        JsonElement part = Parts()[0];
        Assert.Equal(["part", "voice", "lowest", "highest", "notes", "passages"], part.EnumerateObject().Select(field => field.Name));
        Assert.Equal(["midi", "name", "bar"], part.GetProperty("lowest").EnumerateObject().Select(field => field.Name));
        JsonElement passage = part.GetProperty("passages")[0];
        Assert.Equal(["from_bar", "to_bar", "reasons", "score"], passage.EnumerateObject().Select(field => field.Name));
        Assert.True(passage.GetProperty("score").GetDouble() > 0);
        double[] scores = [.. part.GetProperty("passages").EnumerateArray().Select(one => one.GetProperty("score").GetDouble())];
        Assert.Equal(scores.OrderDescending(), scores);
    }

    [Fact]
    public void The_picture_fits_a_narrow_terminal_and_says_what_it_rests_on()
    {
        Assert.Equal(ExitCodes.Ok, Look("cc0/elgar-to-her_satb-grace.mxl"));
        string[] picture = [.. run.Output.Split('\n').SkipWhile(line => line.Length > 0).Skip(1).TakeWhile(line => line.Length > 0)];
        Assert.Equal(6, picture.Length);
        Assert.All(picture, line => Assert.True(line.Length <= 80, line));
        Assert.Matches(Cells(), picture[1]);
        Assert.Contains("Who sings what is guessed", run.Output, StringComparison.Ordinal);
        Assert.Contains("Left out: Piano for practice only", run.Output, StringComparison.Ordinal);
        Assert.Contains("lowest D4 (bar 52), highest G5 (bar 17), 289 notes", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_needs_nothing_else_and_is_not_written_over()
    {
        string page = run.Folder.PathOf("look.html");
        Assert.Equal(ExitCodes.Ok, Look("cc0/stanford-windy-west_8parts-divisi.mxl", "--html", page));
        string html = File.ReadAllText(page);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, Look("cc0/stanford-windy-west_8parts-divisi.mxl", "--html", page));
        Assert.Equal(html, File.ReadAllText(page));
    }

    [Fact]
    public void Repeats_lengthen_the_time_only_when_asked_for()
    {
        Look("cc0/mackenzie-wisdom_satb-repeats.mxl");
        string once = run.Output;
        Look("cc0/mackenzie-wisdom_satb-repeats.mxl", "--played");
        Assert.Contains("as played", run.Output, StringComparison.Ordinal);
        Assert.True(SungSeconds(run.Output) > SungSeconds(once));
    }

    private static int SungSeconds(string text) => int.Parse(Seconds().Match(text).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    private static string Expected(IReadOnlyDictionary<string, string> row) => row["lowest_midi"].Length == 0
        ? "0"
        : $"{row["lowest_midi"]} {row["lowest"]} {row["bar_of_first_lowest"]} {row["highest_midi"]} {row["highest"]} {row["bar_of_first_highest"]} {row["notes"]}";

    private static string Found(JsonElement part) => part.GetProperty("lowest").ValueKind == JsonValueKind.Null
        ? $"{part.GetProperty("notes")}"
        : $"{End(part, "lowest")} {End(part, "highest")} {part.GetProperty("notes")}";

    private static string End(JsonElement part, string end) =>
        $"{part.GetProperty(end).GetProperty("midi")} {part.GetProperty(end).GetProperty("name").GetString()} {part.GetProperty(end).GetProperty("bar").GetString()}";

    [GeneratedRegex("(\\d+) s sung")]
    private static partial Regex Seconds();

    [GeneratedRegex("^Soprano      [·░▒▓█]{54}$")]
    private static partial Regex Cells();

    private JsonElement[] Parts() => [.. JsonDocument.Parse(run.Output).RootElement.GetProperty("parts").EnumerateArray()];

    private int Look(string file, params string[] options) => run.Type(["score", "look", Path.Combine(ScoreTable.Folder, file), .. options]);
}
