using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.Benchmarks;

/// <summary>What stands between a key press in the shell and an answer: files, check, review, next plan.</summary>
internal static class PlanningBenchmarks
{
    private static readonly (string Name, byte[] Bytes)[] Catalogue =
        [.. Directory.GetFiles(DemoChoir.CatalogueFolder, "*.yaml").Order().Select(path => (path, File.ReadAllBytes(path)))];

    private static readonly IReadOnlyList<SessionRecord> Records = DemoChoir.Records();

    private static readonly NextPlanInput Input = new()
    {
        Choir = DemoChoir.Folder.Choir,
        Last = DemoChoir.Plan.Plan,
        Exercises = DemoChoir.Folder.Exercises.ToDictionary(exercise => exercise.Id),
        Review = Review(),
        Date = new(2027, 2, 16),
    };

    internal static IEnumerable<Benchmark> All =>
    [
        new("catalogue parsed", 1, () => Catalogue.Sum(file => ExerciseFile.Read(file.Name, file.Bytes).Value!.Count)),
        new("choir folder and plan loaded", 1, () => DemoChoir.Open().Exercises.Count + DemoChoir.ReadPlan().Plan.Steps.Count),
        new("plan of 12 steps made ready", 1, () => DemoChoir.Build().Planned.Ticks),
        new("plan of 12 steps checked", 1, () => PlanCheck.Check(DemoChoir.Warmup).Count),
        new("review of a whole run", 1, () => Review().Counts.Count),
        new("next plan", 1, () => NextPlan.From(Input).Plan.Steps.Count),
    ];

    private static SessionReview Review() =>
        SessionReview.From(Records, DemoChoir.Folder.Choir, DemoChoir.Folder.Exercises.ToDictionary(exercise => exercise.Id));
}
