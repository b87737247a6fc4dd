using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WarmupConsole.App;
using WarmupConsole.App.Reports;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Storage.MusicXml;

namespace WarmupConsole.Tests.App;

/// <summary>Every command that prints has --json; docs/json.md names all that comes out. WARMUP_ACCEPT=1 writes the page anew.</summary>
public sealed class JsonPageTests
{
    private const string Page = "docs/json.md";

    private static readonly string Score = Path.Combine(ScoreTable.Folder, "cc0", "lift-every-voice_satb.mxl");

    /// <summary>The commands, as typed and as the page heads them, with the shape of what they print; in this order they run in one folder.</summary>
    private static readonly (string Command, string Typed, JsonTypeInfo Shape)[] Rows =
    [
        ("ports", "ports --port none", ReportJson.Default.PortsReport),
        ("check PLAN", "check {plan}", ReportJson.Default.CheckReport),
        ("keys PLAN", "keys {plan}", ReportJson.Default.KeysReport),
        ("keys --exercise ID", "keys --exercise octave-leap", ReportJson.Default.KeysReport),
        ("plan next", "plan next", ReportJson.Default.NextPlanReport),
        ("plan explain PLAN", "plan explain {plan}", ReportJson.Default.ExplanationReport),
        ("season", "season", ReportJson.Default.CalendarReport),
        ("export PLAN", "export {plan} --midi {plan}.mid --sheet {plan}.html", ReportJson.Default.ExportReport),
        ("new FOLDER", "new ours --voices satb", ReportJson.Default.WrittenReport),
        ("ranges", "ranges", ReportJson.Default.RangesReport),
        ("need add", "need add --part alto --pitch C5 --until 2027-05-22", ReportJson.Default.NeedsReport),
        ("need list", "need list --all", ReportJson.Default.NeedsReport),
        ("need done NUMBER", "need done 1", ReportJson.Default.NeedsReport),
        ("exercises list", "exercises list", ReportJson.Default.ExercisesReport),
        ("exercises find WORDS", "exercises find canon", ReportJson.Default.ExercisesReport),
        ("exercises show ID", "exercises show five-note-scale", ReportJson.Default.ExercisesReport),
        ("exercises add", "exercises add --title Quay --line 1", ReportJson.Default.ExercisesReport),
        ("score drill FILE", "score drill {score} --part alto --bars 9-10", ReportJson.Default.ExercisesReport),
        ("score need FILE", "score need {score} --part alto --bars 9-10", ReportJson.Default.NeedsReport),
        ("score look FILE", "score look {score}", ReportJson.Default.ScoreReport),
        ("score map FILE", "score map {score}", ReportJson.Default.MapReport),
    ];

    /// <summary>Those that need the logs of a season.</summary>
    private static readonly (string Command, string Typed, JsonTypeInfo Shape)[] SeasonRows =
    [
        ("review", "review", ReportJson.Default.ReviewReport),
        ("review dismiss FINDING", "review dismiss {finding} --why piano", ReportJson.Default.DecisionReport),
        ("review restore FINDING", "review restore {finding}", ReportJson.Default.DecisionReport),
        ("ranges accept PART", "ranges accept soprano", ReportJson.Default.RangesReport),
    ];

    [Fact]
    public void The_page_names_everything_that_comes_out()
    {
        string wanted = $"""
            # What `--json` prints

            Every command that prints takes `--json`; `run`, `plan edit` and `ranges check` lead a dialogue and do not, and `shell` writes for shells. This page is written from the program's own tables
            (`WARMUP_ACCEPT=1` with the tests), and a test runs every command of it.

            - One object, with names in small letters and underscores. Names may be added, none is taken away or changed.
            - Ids, days (`2027-02-16`) and named pitches (`Eb4`) are those of the files, whatever the choir's note names; whole numbers for pitches are sounding MIDI
              numbers (60 is middle C). Sentences are those of the text, in the choir's note names. Steps, rungs, lines and columns count from 1.
            - `null` stands where there is nothing to say. `written` names the file that a command wrote.
            - What is wrong is told as text on standard error, and the exit codes are the same: 0 good, 1 findings, 2 bad input or use, 70 a fault of the program.
            - A command that would ask (`exercises add`, `score map`) asks nothing with `--json`: what is not given is taken as proposed.

            {string.Join("\n\n", Rows.Concat(SeasonRows).GroupBy(row => row.Shape).Select(Section))}

            """.ReplaceLineEndings("\n");
        string path = Path.Combine(Repository.Root, Page);
        if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
        {
            File.WriteAllText(path, wanted);
        }

        Assert.Equal(wanted, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Every_command_prints_what_the_page_says_and_nothing_else()
    {
        using ToolRun tool = new();
        foreach ((_, string typed, JsonTypeInfo shape) in Rows.Where(row => row.Shape != ReportJson.Default.PortsReport)) // no test opens a device
        {
            int code = tool.Call([.. Words(typed, tool.PathOf("plans/2027-02-16.yaml")), "--json"]);
            Assert.True(code == ExitCodes.Ok, $"{typed}: {code} {tool.Errors}");
            AssertShape(shape, tool.Output, typed);
        }
    }

    [Fact]
    public void So_do_those_that_look_back_on_a_season()
    {
        using CommandRun run = new();
        SeasonFolder.Write(run.Folder, SeasonSimulator.Make(new(1001, 6, 1, 0.40)));
        run.Type("review", "--json");
        string finding = JsonDocument.Parse(run.Output).RootElement.GetProperty("season").GetProperty("findings")[0].GetProperty("id").GetString()!;
        foreach ((_, string typed, JsonTypeInfo shape) in SeasonRows)
        {
            Assert.Equal(ExitCodes.Ok, run.Type([.. Words(typed, finding), "--json"]));
            AssertShape(shape, run.Output, typed);
        }
    }

    [Fact]
    public void What_was_written_is_there()
    {
        using ToolRun tool = new();
        Assert.Equal(ExitCodes.Ok, tool.Call("exercises", "add", "--title", "Quay", "--line", "1 2 3", "--json"));
        Assert.True(File.Exists(JsonDocument.Parse(tool.Output).RootElement.GetProperty("written").GetString()));
        Assert.Equal(ExitCodes.Ok, tool.Call("new", "ours", "--voices", "sab", "--json"));
        Assert.All(JsonDocument.Parse(tool.Output).RootElement.GetProperty("written").EnumerateArray(), file => Assert.True(File.Exists(file.GetString())));
    }

    [Fact]
    public void Of_the_ports_the_one_in_use_is_named_with_the_reason()
    {
        SoundOutlook mute = new(false, "No loudspeaker.");
        PortListing two = new(["Midi Through", "Quay Piano"], null);
        PortsReport first = PortsReport.From((two, PortChoice.First, "why"), mute, new(two, PortChoice.First, "why"));
        AssertShape(ReportJson.Default.PortsReport, first.ToJson() + "\n", "ports");
        Assert.Equal(("Quay Piano", "Quay Piano"), (first.Used, first.Heard));
        foreach (PortChoice other in (PortChoice[])[PortChoice.Named("organ"), PortChoice.None])
        {
            PortsReport report = PortsReport.From((two, other, "why"), mute, new(two, other, "why"));
            Assert.Equal((null, null), (report.Used, report.Heard));
        }
    }

    [Fact]
    public void A_test_of_the_port_is_heard_and_prints_no_json()
    {
        using ToolRun tool = new();
        Assert.Equal(ExitCodes.BadInput, tool.Call("ports", "--test", "--json"));
        Assert.Contains(AppTexts.TestIsHeard, tool.Errors, StringComparison.Ordinal);
    }

    /// <summary>From the help of the program itself, so that a new command is not forgotten.</summary>
    [Fact]
    public void Every_command_that_prints_has_the_option_and_stands_on_the_page()
    {
        using ToolRun tool = new();
        // What is led or asked has nothing else to print.
        string[] silent = ["run", "plan edit", "ranges check", "shell man", "shell bash", "shell zsh", "shell fish"];
        string[] commands = [.. Leaves(tool, []).Except(silent)];
        Assert.NotEmpty(commands);
        Offenders.None("commands without --json", commands.Where(command => !Help(tool, command).Contains("--json", StringComparison.Ordinal)));
        Offenders.None("commands that docs/json.md does not name", commands.Where(command => !Rows.Concat(SeasonRows).Any(row => row.Typed.StartsWith(command, StringComparison.Ordinal))));
    }

    private static string[] Words(string typed, string value) =>
        [.. typed.Split(' ').Select(word => word.Replace("{plan}", value, StringComparison.Ordinal).Replace("{finding}", value, StringComparison.Ordinal).Replace("{score}", Score, StringComparison.Ordinal))];

    /// <summary>Commands without others below them, as typed; a group that also prints by itself is one too.</summary>
    private static IEnumerable<string> Leaves(ToolRun tool, string[] command)
    {
        string help = Help(tool, string.Join(' ', command));
        string[] below = [.. help.Split("Commands:").Skip(1).SelectMany(list => list.Split('\n').Skip(1).TakeWhile(line => line.StartsWith("  ", StringComparison.Ordinal)))
            .Where(line => line.Length > 2 && line[2] != ' ').Select(line => line.Trim().Split(' ')[0])];
        bool printsItself = command.Length > 0 && (below.Length == 0 || help.Contains("--choir", StringComparison.Ordinal));
        return [.. printsItself ? [string.Join(' ', command)] : (string[])[], .. below.SelectMany(name => Leaves(tool, [.. command, name]))];
    }

    private static string Help(ToolRun tool, string command)
    {
        tool.Call([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        return tool.Output;
    }

    private static string Section(IGrouping<JsonTypeInfo, (string Command, string Typed, JsonTypeInfo Shape)> rows)
    {
        StringBuilder names = new();
        Names(names, rows.Key, "");
        string season = rows.Key == ReportJson.Default.ReviewReport ? "season" : "";
        if (season.Length > 0)
        {
            names.Append(season).Append('\n');
            Names(names, ReportJson.Default.SeasonReport, "  ");
        }

        return $"## {string.Join(", ", rows.Select(row => $"`warmup {row.Command}`"))}\n\n```text\n{names.ToString().TrimEnd()}\n```";
    }

    private static void Names(StringBuilder text, JsonTypeInfo shape, string indent)
    {
        foreach (JsonPropertyInfo property in shape.Properties)
        {
            (JsonTypeInfo inner, string mark) = Inner(property);
            text.Append(indent).Append(property.Name).Append(mark).Append('\n');
            Names(text, inner, indent + "  ");
        }
    }

    private static (JsonTypeInfo Shape, string Mark) Inner(JsonPropertyInfo property)
    {
        JsonTypeInfo shape = ReportJson.Default.GetTypeInfo(property.PropertyType)!;
        return shape.Kind == JsonTypeInfoKind.Enumerable ? (ReportJson.Default.GetTypeInfo(shape.ElementType!)!, "[]") : (shape, "");
    }

    private static void AssertShape(JsonTypeInfo shape, string output, string typed)
    {
        Assert.EndsWith("}\n", output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        AssertShape(shape, JsonDocument.Parse(output).RootElement, typed);
    }

    private static void AssertShape(JsonTypeInfo shape, JsonElement element, string where)
    {
        foreach (JsonProperty property in element.EnumerateObject())
        {
            if ((where, property.Name) is ("review", "season"))
            {
                AssertShape(ReportJson.Default.SeasonReport, property.Value, where);
                continue;
            }

            JsonPropertyInfo known = Assert.Single(shape.Properties, one => one.Name == property.Name);
            Assert.Matches("^[a-z]+(_[a-z]+)*$", property.Name);
            JsonElement[] inner = property.Value.ValueKind switch
            {
                JsonValueKind.Array => [.. property.Value.EnumerateArray().Where(item => item.ValueKind == JsonValueKind.Object)],
                JsonValueKind.Object => [property.Value],
                _ => [],
            };
            Assert.All(inner, item => AssertShape(Inner(known).Shape, item, $"{where}/{property.Name}"));
        }
    }
}
