using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.Benchmarks;

/// <summary>What stands between a key press in the shell and an answer: files, check, review, next plan.</summary>
internal static class PlanningBenchmarks
{
    /// <summary>A proposal takes long against the others.</summary>
    private const int FewSamples = 50;

    private static readonly (string Name, byte[] Bytes)[] Catalogue =
        [.. Directory.GetFiles(DemoChoir.CatalogueFolder, "*.yaml").Order().Select(path => (path, File.ReadAllBytes(path)))];

    private static readonly IReadOnlyList<SessionRecord> Records = DemoChoir.Records();

    private static readonly NextPlanInput Hundred = Input(100);
    private static readonly NextPlanInput FiveThousand = Input(5_000);

    internal static IEnumerable<Benchmark> All =>
    [
        new("catalogue parsed", 1, () => Catalogue.Sum(file => ExerciseFile.Read(file.Name, file.Bytes).Value!.Count)),
        new("choir folder and plan loaded", 1, () => DemoChoir.Open().Exercises.Count + DemoChoir.ReadPlan().Plan.Steps.Count),
        new("plan of 12 steps made ready", 1, () => DemoChoir.Build().Planned.Ticks),
        new("plan of 12 steps checked", 1, () => PlanCheck.Check(DemoChoir.Warmup).Count),
        new("review of a whole run", 1, () => Review().Counts.Count),
        new("next plan, 100 exercises", 1, () => NextPlan.From(Hundred).Plan.Steps.Count) { Samples = FewSamples },
        new("next plan, 5,000 exercises", 1, () => NextPlan.From(FiveThousand).Plan.Steps.Count) { Samples = FewSamples },
    ];

    /// <summary>Exercises of the catalogue, again and again under other ids and at other tempos, with three findings.</summary>
    private static NextPlanInput Input(int exercises) => new()
    {
        Choir = DemoChoir.Folder.Choir,
        Last = DemoChoir.Plan.Plan with { Minutes = 20, Steps = [.. DemoChoir.Plan.Plan.Steps.Where((_, index) => exercises > 100 || index % 2 == 0)] },
        Exercises = Enumerable.Range(0, exercises).Select(Exercise).ToDictionary(exercise => exercise.Id),
        Review = Review(),
        Findings = [Finding("alto", "B4"), Finding("soprano", "E5"), Finding("tenor", "D4")],
        Date = new(2027, 2, 16),
    };

    private static Exercise Exercise(int number)
    {
        ExerciseShelf all = DemoChoir.Folder.Exercises;
        Exercise one = all[number % all.Count];
        int copy = number / all.Count;
        Tempo tempo = Tempo.Clamp(one.Tempo.Default.MilliBeatsPerMinute + (500 * copy));
        return copy == 0 ? one : one with { Id = $"{one.Id}-{copy}", Tempo = one.Tempo with { Default = tempo } };
    }

    private static Finding Finding(string part, string pitch) => new()
    {
        Id = $"{part}-flat-{pitch.ToLowerInvariant()}",
        Part = part,
        Kind = "flat",
        Pitch = Pitch.Parse(pitch),
        Rate = Rate.Of(8, 24),
        Elsewhere = Rate.Of(3, 100),
        Strength = 9,
        Chance = 0.0001,
        Circumstances = [new(Aspect.Vowel, "u", Rate.Of(7, 10), Rate.Of(1, 14), 0.001)],
        Trend = new(TrendDirection.TooEarly, default, default, 0.5),
        Sessions = [],
        Evidence = [],
    };

    private static SessionReview Review() =>
        SessionReview.From(Records, DemoChoir.Folder.Choir, DemoChoir.Folder.Exercises.ToDictionary(exercise => exercise.Id));
}
