using Json.Schema;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Scores;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Tui;

namespace WarmupConsole.Tests.Storage.Schemas;

public sealed class SchemaTests
{
    private static readonly Dictionary<string, FieldTable> Tables = new()
    {
        ["choir"] = ChoirFields.Choir,
        ["exercises"] = ExerciseFields.Exercises,
        ["plan"] = PlanFields.Plan,
        ["needs"] = NeedFields.Needs,
        ["settings"] = SettingsFolder.Fields,
        ["score-map"] = ScoreMapFields.Map,
    };

    public static TheoryData<string> Names => [.. Tables.Keys];

    public static TheoryData<string, string> Shipped =>
    [
        .. Files("plans-demo", "choir.yaml").Select(path => ("choir", path)),
        .. Files("plans-demo/plans", "*.yaml").Select(path => ("plan", path)),
        .. Files("plans-demo/exercises", "*.yaml").Select(path => ("exercises", path)),
        .. Files("src/WarmupConsole.Storage/Catalogue", "*.yaml").Select(path => ("exercises", path)),
        .. Files("src/WarmupConsole.Storage/BuiltIn", "*.yaml").Select(path => (Kind(Path.GetFileName(path)), path)),
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_published_schema_is_what_the_readers_table_says(string name) =>
        GoldenText.CheckFile(GoldenText.Docs($"schemas/{name}.schema.json"), SchemaText.Write(Tables[name]));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_file_is_valid(string kind, string path) =>
        Assert.Empty(Faults(kind, File.ReadAllText(Path.Combine(Repository.Root, path))));

    [Fact]
    public void Files_of_every_kind_with_every_field_are_valid()
    {
        Assert.Empty(Faults("choir", Samples.Choir));
        Assert.Empty(Faults("plan", Samples.Plan));
        Assert.Empty(Faults("exercises", Samples.Exercises));
        Assert.Empty(Faults("exercises", Samples.InParts));
        Assert.Empty(Faults("needs", "format: 1\nneeds:\n  - {part: alto, pitch: E4, piece: Ferry song, bars: 12, until: 2027-05-22}\n  - {purpose: tuning.third, done: 2027-01-01}\n"));
        Assert.Empty(Faults("settings", "format: 1\nport: Stage piano\n"));
        Assert.Empty(Faults("score-map", "format: 1\nlanguage: la\nlines:\n  - {score: P1, name: Women, voice: \"2\", part: alto}\n  - {score: \"#2\", part: none}\n"));
    }

    [Theory]
    [InlineData("plan", "format: 2\nsteps: [{exercise: a}]\n")] // a form that is not known
    [InlineData("plan", "steps: [{exercise: a}]\n")] // no form
    [InlineData("plan", "format: 1\n")] // neither steps nor bare
    [InlineData("plan", "format: 1\nbare: {because: b}\nsteps: [{exercise: a}]\n")] // both
    [InlineData("plan", "format: 1\nsteps: []\n")] // too few
    [InlineData("plan", "format: 1\nsteps: [{exercize: a}]\n")] // an unknown name
    [InlineData("plan", "format: 1\nsteps: [{exercise: A b}]\n")] // no id
    [InlineData("plan", "format: 1\nminutes: 99\nsteps: [{exercise: a}]\n")] // out of range
    [InlineData("plan", "format: 1\nsteps: [{exercise: a, keys: {shape: sideways}}]\n")] // no such word
    [InlineData("plan", "format: 1\nsteps: [{exercise: a, tempo: {from: 60}}]\n")] // the last tempo is missing
    [InlineData("plan", "format: 1\ndate: tomorrow\nsteps: [{exercise: a}]\n")] // no date
    [InlineData("choir", "format: 1\nname: N\nparts: [{id: a, extreme: C4-G5}]\n")] // half a range
    [InlineData("choir", "format: 1\nname: N\nparts: [{id: a, ranges: [{from: 2027-01-01, extreme: C4-G5}]}]\n")]
    [InlineData("choir", "format: 1\nname: N\ndemo: 1\nparts: [{id: a, extreme: C4-G5, comfortable: C4-G5}]\n")] // no yes or no
    [InlineData("exercises", "format: 1\nexercises: [{id: a, title: A, stage: sung, tempo: {default: 60, from: 60, to: 60}}]\n")] // nothing to sing
    [InlineData("exercises", "format: 1\nexercises: [{id: a, title: A, stage: sung, tempo: {default: 60, from: 60, to: 60}, pattern: 1, rounds: 2}]\n")]
    [InlineData("exercises", "format: 1\nexercises: [{id: a, title: A, stage: body, tempo: {default: 60, from: 60, to: 60}, pattern: 1, phases: [{do: in, counts: 2}]}]\n")]
    [InlineData("exercises", "format: 1\nexercises: [{id: a, title: A, stage: breathing, tempo: {default: 60, from: 60, to: 60}, phases: [{do: hold, counts: 5}]}]\n")] // too long
    [InlineData("exercises", "format: 1\nexercises: [{id: a, title: A, stage: sung, tempo: 60, pattern: 1}]\n")] // a wrong type
    [InlineData("needs", "format: 1\nneeds: [{part: alto}]\n")] // of no kind
    [InlineData("needs", "format: 1\nneeds: [{pitch: C4, region: C4-D4}]\n")] // of two kinds
    [InlineData("settings", "format: 1\nports: x\n")]
    [InlineData("score-map", "format: 1\nlines: [{score: P1}]\n")] // nobody sings it
    [InlineData("score-map", "format: 1\nlines: []\n")]
    public void What_the_reader_refuses_for_its_form_the_schema_refuses_too(string kind, string yaml)
    {
        Assert.NotEmpty(Faults(kind, yaml));
        Assert.NotEmpty(Problems(kind, yaml));
    }

    [Fact]
    public void Every_row_has_words_for_an_editor_to_show() =>
        Assert.All(Tables.Values.SelectMany(AllRows), row => Assert.EndsWith(".", row.About.TrimEnd('"'), StringComparison.Ordinal));

    private static IEnumerable<Field> AllRows(FieldTable table) => table.Rows.SelectMany(row => AllRows(row.Shape).Prepend(row));

    private static IEnumerable<Field> AllRows(FieldShape shape) => shape switch
    {
        FieldShape.Map map => AllRows(map.Table),
        FieldShape.List list => AllRows(list.Item),
        FieldShape.Either either => [.. AllRows(either.First), .. AllRows(either.Second)],
        _ => [],
    };

    private static IReadOnlyList<FileProblem> Problems(string kind, string yaml)
    {
        byte[] bytes = System.Text.Encoding.UTF8.GetBytes(yaml);
        using TemporaryFolder folder = new();
        return kind switch
        {
            "choir" => ChoirFile.Read("f", bytes).Problems,
            "plan" => PlanFile.Read("f", bytes).Problems,
            "needs" => NeedsFile.Read("f", bytes, ChoirFile.Read("c", System.Text.Encoding.UTF8.GetBytes(Samples.Choir)).Value!).Problems,
            "score-map" => ScoreMapFile.Read("f", bytes, null, ChoirFile.Read("c", System.Text.Encoding.UTF8.GetBytes(Samples.Choir)).Value!.Parts).Problems,
            "settings" => new SettingsFolder(Path.GetDirectoryName(folder.Write(yaml, "settings.yaml"))!).ReadSettings().Problems,
            _ => ExerciseFile.Read("f", bytes).Problems,
        };
    }

    private static string[] Faults(string kind, string yaml)
    {
        JsonSchema schema = JsonSchema.FromText(File.ReadAllText(GoldenText.Docs($"schemas/{kind}.schema.json")));
        EvaluationResults results = schema.Evaluate(System.Text.Json.JsonSerializer.SerializeToElement(YamlAsJson.Read(yaml)), new() { OutputFormat = OutputFormat.List });
        return results.IsValid ? [] : [.. (results.Details ?? []).Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}")), "invalid"];
    }

    private static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), pattern).Select(path => Path.GetRelativePath(Repository.Root, path)).Order(StringComparer.Ordinal);

    private static string Kind(string name) => name.Contains("choir", StringComparison.Ordinal) ? "choir" : name.Contains("plan", StringComparison.Ordinal) ? "plan" : "exercises";
}
