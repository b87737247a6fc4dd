using WarmupConsole.Music.Pitches;
using WarmupConsole.Storage;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Folders;

public sealed class ChoirFolderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly SettingsFolder settings;

    public ChoirFolderTests() => settings = new(folder.PathOf("settings"));

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_whole_folder_is_opened_and_its_newest_plan_read()
    {
        Furnish();
        folder.Write(Samples.Plan, "choir", "plans", "2027-02-16.yaml");
        folder.Write(Samples.Plan, "choir", "plans", "2027-02-09.yaml");
        folder.Write(Samples.Plan, "choir", "plans", "warm-weather.yaml");
        folder.Write("not a plan", "choir", "plans", "notes.txt");
        folder.Write("", "choir", "sessions", "2027-02-09T19-30-05.jsonl");
        ChoirFolder choir = Open().Value!;
        Assert.Equal(["warm-weather.yaml", "2027-02-09.yaml", "2027-02-16.yaml"], choir.PlanPaths.Select(Path.GetFileName));
        LoadedPlan plan = choir.ReadPlan(choir.NewestPlan!).Value!;
        Assert.Equal(("A calm quarter of an hour", Samples.Plan), (plan.Plan.Title, plan.Yaml));
        Assert.Equal(["2027-02-09T19-30-05.jsonl"], choir.SessionPaths.Select(Path.GetFileName));
        Assert.Equal((choir.Root, Samples.Choir), (choir.WriteRoot, choir.ChoirYaml));
        Assert.Equal(choir.Root, ChoirFolder.RootOf(choir.NewestPlan!));
    }

    [Fact]
    public void A_folder_without_plans_and_sessions_is_no_problem()
    {
        folder.Write(Samples.Choir, "choir", "choir.yaml");
        ChoirFolder choir = Open().Value!;
        Assert.Null(choir.NewestPlan);
        Assert.Empty(choir.SessionPaths);
    }

    [Fact]
    public void Missing_folders_and_files_are_told_by_name()
    {
        Assert.Equal(StorageTexts.NoSuchFolder, Assert.Single(Open().Problems).Message);
        Directory.CreateDirectory(folder.PathOf("choir"));
        Assert.Equal($"{folder.PathOf("choir", "choir.yaml")}: {StorageTexts.NoSuchFile}", Assert.Single(Open().Problems).ToString());
    }

    [Fact]
    public void A_folder_in_place_of_a_file_is_told()
    {
        Furnish();
        Directory.CreateDirectory(folder.PathOf("choir", "plans", "2027-02-16.yaml"));
        Assert.Contains("it is a folder", Assert.Single(Open().Value!.ReadPlan(folder.PathOf("choir", "plans", "2027-02-16.yaml")).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_in_several_files_is_told_at_once()
    {
        folder.Write(Samples.Choir.Replace("rehearsal: 120", "rehearsal: 1"), "choir", "choir.yaml");
        folder.Write("format: 3\n", "choir", "exercises", "a.yaml");
        folder.Write("format: 1\n", "choir", "exercises", "b.yaml");
        Assert.Equal(["choir.yaml", "a.yaml", "b.yaml"], Open().Problems.Select(problem => Path.GetFileName(problem.File)));
    }

    [Fact]
    public void An_exercise_id_used_in_two_files_names_both()
    {
        Furnish();
        folder.Write(OwnExercises(), "choir", "exercises", "twice.yaml");
        FileProblem problem = Open().Problems[0];
        Assert.Contains("own.yaml", problem.Message, StringComparison.Ordinal);
        Assert.EndsWith("twice.yaml", problem.File, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_that_names_an_unknown_exercise_is_pointed_at()
    {
        Furnish();
        string plan = folder.Write(Samples.Plan.Replace("five-note-scale", "five-note-scala"), "choir", "plans", "p.yaml");
        FileProblem problem = Assert.Single(Open().Value!.ReadPlan(plan).Problems);
        Assert.Equal((plan, 12, 15), (problem.File, problem.Line, problem.Column));
    }

    [Fact]
    public void A_demo_choir_is_written_to_nowhere_but_the_settings_folder()
    {
        Furnish();
        folder.Write(Samples.Choir.Replace("demo: false", "demo: true"), "choir", "choir.yaml");
        folder.Write(Samples.Plan, "choir", "plans", "2027-02-16.yaml");
        ChoirFolder choir = Open().Value!;
        Assert.Equal(folder.PathOf("settings", "demo", "choir"), choir.WriteRoot);
        string next = choir.PlanPathFor(new(2027, 2, 23));
        Assert.Null(ChoirFolder.WritePlan(next, choir.ReadPlan(choir.NewestPlan!).Value!.Plan));
        Assert.Equal(next, choir.NewestPlan);
        Assert.StartsWith(choir.WriteRoot, choir.SessionsFolder, StringComparison.Ordinal);
        Assert.True(choir.ReadPlan(next).IsGood);
    }

    [Fact]
    public void Ranges_that_the_console_wrote_win_over_the_choir_file_when_they_are_newer()
    {
        folder.Write(Samples.Choir.Replace("comfortable: C4-F5", "comfortable: C4-F5\n    ranges: [{from: 2027-01-12, extreme: C4-F5, comfortable: C4-E5}]"), "choir", "choir.yaml");
        folder.Write(string.Join('\n',
            Line("2027-01-05", "soprano", "C4-A5", "C4-G5"),
            Line("2027-01-12", "soprano", "C4-B5", "C4-G5"),
            Line("2027-02-02", "soprano", "D4-A5", "D4-F5"),
            Line("2027-02-02", "soprano", "D4-G5", "D4-F5"),
            Line("2027-02-02", "gone", "D4-G5", "D4-F5"),
            ""), "choir", "ranges.jsonl");
        Assert.Equal(
            ["C4–G5", "C4–A5", "C4–F5", "D4–G5"],
            new[] { (2026, 12, 31), (2027, 1, 11), (2027, 2, 1), (2027, 2, 2) }.Select(day => OpenOn(new(day.Item1, day.Item2, day.Item3)).Choir.Parts[0].Range.Extreme.ToString()));
        Assert.Equal("D4–G5", Open().Value!.Choir.Parts[0].Range.Extreme.ToString());
    }

    [Fact]
    public void The_choir_kept_for_the_log_has_the_ranges_of_the_day_and_no_others()
    {
        folder.Write(Samples.Choir, "choir", "choir.yaml");
        Assert.Equal(Samples.Choir, OpenOn(new(2027, 2, 2)).ChoirYaml);
        folder.Write(Line("2027-02-02", "soprano", "D4-A5", "D4-F5"), "choir", "ranges.jsonl");
        string kept = OpenOn(new(2027, 2, 2)).ChoirYaml;
        Assert.Contains("extreme: D4-A5", kept, StringComparison.Ordinal);
        Assert.Equal(2, ChoirFile.Read("kept", Expect.Bytes(kept)).Value!.Parts.Sum(part => part.History.Count));
    }

    [Fact]
    public void What_is_wrong_in_ranges_is_told_and_nothing_is_opened()
    {
        folder.Write(Samples.Choir, "choir", "choir.yaml");
        folder.Write("{}", "choir", "ranges.jsonl");
        Assert.EndsWith("ranges.jsonl", Open().Problems[0].File, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranges_of_a_demo_choir_are_written_to_and_read_from_the_settings_folder()
    {
        folder.Write(Samples.Choir.Replace("demo: false", "demo: true"), "choir", "choir.yaml");
        string path = Open().Value!.RangesPath;
        Assert.Equal(folder.PathOf("settings", "demo", "choir", "ranges.jsonl"), path);
        Assert.Null(RangesFile.Append(path, new("soprano", new(2027, 2, 2), new(new(Pitch.Parse("D4"), Pitch.Parse("A5")), new(Pitch.Parse("D4"), Pitch.Parse("F5"))))));
        Assert.Equal("D4–A5", Open().Value!.Choir.Parts[0].Range.Extreme.ToString());
        Assert.False(File.Exists(folder.PathOf("choir", "ranges.jsonl")));
    }

    [Fact]
    public void Nothing_is_overwritten()
    {
        string path = folder.Write("mine", "plans", "p.yaml");
        Assert.Equal(StorageTexts.AlreadyThere, NewFile.Write(path, "other"u8));
        Assert.Equal("mine", File.ReadAllText(path));
    }

    private FileRead<ChoirFolder> Open() => ChoirFolder.Open(folder.PathOf("choir"), settings);

    private ChoirFolder OpenOn(DateOnly day) => ChoirFolder.Open(folder.PathOf("choir"), settings, day).Value!;

    private static string Line(string from, string part, string extreme, string comfortable) =>
        $$"""{"format": 1, "from": "{{from}}", "part": "{{part}}", "extreme": "{{extreme}}", "comfortable": "{{comfortable}}"}""";

    private void Furnish()
    {
        folder.Write(Samples.Choir, "choir", "choir.yaml");
        folder.Write(OwnExercises(), "choir", "exercises", "own.yaml");
    }

    /// <summary>The sample exercises that the catalogue does not hold already.</summary>
    private static string OwnExercises()
    {
        IReadOnlyList<string> known = [.. Catalogue.Exercises.Select(exercise => exercise.Id)];
        return known.Contains("five-note-scale")
            ? Samples.Exercises.Replace("id: five-note-scale", "id: own-scale").Replace("id: counted-breath", "id: own-breath")
            : Samples.Exercises;
    }
}
