using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Scores;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Storage.Yaml;

/// <summary>One kind of file: what is spoilt of it, and what is done with it then.</summary>
/// <param name="Name">In words.</param>
/// <param name="Samples">Good files.</param>
/// <param name="Use">Reads it, and when it is good does with it what the program would; gives the problems.</param>
internal sealed record SpoiltFile(string Name, string[] Samples, Func<byte[], IReadOnlyList<FileProblem>> Use)
{
    /// <summary>Good files that are no text; in place of samples.</summary>
    internal byte[][] Packed { get; init; } = [];

    private static readonly Choir QuayChoir = ChoirFile.Read("choir.yaml", File.ReadAllBytes(Demo("choir.yaml"))).Value!;

    private static readonly Exercise[] Known =
        [.. Catalogue.Exercises, .. ExerciseFile.Read("own.yaml", File.ReadAllBytes(Demo("exercises/own.yaml"))).Value!];

    private static readonly Dictionary<string, Exercise> ById = Known.ToDictionary(exercise => exercise.Id);

    private static readonly string[] DemoPlans = [.. Directory.GetFiles(Demo("plans")).Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    private static readonly Plan DemoPlan = PlanFile.Read("p", Encoding.UTF8.GetBytes(DemoPlans[1])).Value!;

    internal static IReadOnlyList<SpoiltFile> Kinds { get; } =
    [
        new("a plan", [Storage.Samples.Plan, .. DemoPlans, "format: 1\nbare: {told: true, because: A concert in three days}\n"], Plan),
        new("a plan read alone", [Storage.Samples.Plan], bytes => PlanFile.Read("f", bytes).Problems),
        new("exercises", [Storage.Samples.Exercises, Storage.Samples.InParts, File.ReadAllText(Demo("exercises/own.yaml"))], Exercises),
        new("a choir", [Storage.Samples.Choir, File.ReadAllText(Demo("choir.yaml"))], Choir),
        new("needs", ["format: 1\nneeds:\n  - {part: alto, pitch: E4, piece: Ferry song, bars: 12-15, until: 2027-05-22}\n  - purpose: tuning.third\n    done: 2027-01-01\n  - {region: C5-F5}\n"], bytes => NeedsFile.Read("f", bytes, QuayChoir).Problems),
        new("a score map", ["format: 1\nlanguage: la\nlines:\n  - {score: P1, name: Women, voice: 1, part: alto}\n  - {score: P2, part: none}\n"], bytes => ScoreMapFile.Read("f", bytes, null, QuayChoir.Parts).Problems),
        new("settings", ["format: 1\nport: \"Stage piano 2\"\n", "format: 1\ninput: piano\npedals:\n  go-on: sustain\n  pin: key 21\n  silence: controller 80, reversed\n"], Settings),
        new("ranges", ["{\"format\": 1, \"from\": \"2027-01-12\", \"part\": \"alto\", \"extreme\": \"G3-D5\", \"comfortable\": \"A3-C5\"}\n"], Ranges),
    ];

    private static string Demo(string path) => Path.Combine(Repository.Root, "plans-demo", path);

    private static IReadOnlyList<FileProblem> Plan(byte[] bytes)
    {
        FileRead<Plan> read = PlanFile.Read("f", bytes, new(Known, QuayChoir));
        if (read.IsGood)
        {
            PlanCheck.Check(WarmupBuilder.Build(QuayChoir, read.Value, ById), [DemoPlan]);
            ReadsBack(PlanFile.Write(read.Value), text => PlanFile.Write(PlanFile.Read("f", text, new(Known, QuayChoir)).Value!));
            PlanPlaces.Of(Encoding.UTF8.GetString(bytes)).Find(0, "keys");
        }

        return read.Problems;
    }

    private static IReadOnlyList<FileProblem> Exercises(byte[] bytes)
    {
        FileRead<IReadOnlyList<Exercise>> read = ExerciseFile.Read("f", bytes);
        foreach (Exercise exercise in read.Value ?? [])
        {
            ExerciseFigures.Of(exercise);
            PurposeRules.Served(exercise);
            Plan plan = new() { Steps = [new() { ExerciseId = exercise.Id }] };
            PlanCheck.Check(WarmupBuilder.Build(QuayChoir, plan, new Dictionary<string, Exercise> { [exercise.Id] = exercise }));
        }

        if (read.IsGood)
        {
            ReadsBack(ExerciseFile.Write(read.Value), text => ExerciseFile.Write(ExerciseFile.Read("f", text).Value!));
        }

        return read.Problems;
    }

    private static IReadOnlyList<FileProblem> Choir(byte[] bytes)
    {
        FileRead<Choir> read = ChoirFile.Read("f", bytes);
        if (read.IsGood)
        {
            PlanCheck.Check(WarmupBuilder.Build(read.Value, DemoPlan, ById));
            ReadsBack(ChoirFile.Write(read.Value), text => ChoirFile.Write(ChoirFile.Read("f", text).Value!));
        }

        return read.Problems;
    }

    private static IReadOnlyList<FileProblem> Settings(byte[] bytes)
    {
        FileRead<MachineSettings> read = SettingsFolder.Parse("f", bytes);
        if (read.IsGood)
        {
            Assert.Equal(read.Value, SettingsFolder.Parse("f", Encoding.UTF8.GetBytes(SettingsFolder.Write(read.Value))).Value);
        }

        return read.Problems;
    }

    private static IReadOnlyList<FileProblem> Ranges(byte[] bytes)
    {
        FileRead<IReadOnlyList<MeasuredRange>> read = RangesFile.Read("f", bytes);
        Assert.All(read.Value ?? [], range => Assert.Equal(range, Assert.Single(RangesFile.Read("f", Encoding.UTF8.GetBytes(RangesFile.Write(range))).Value!)));
        return read.Problems;
    }

    private static void ReadsBack(string written, Func<byte[], string> again) => Assert.Equal(written, again(Encoding.UTF8.GetBytes(written)));
}
