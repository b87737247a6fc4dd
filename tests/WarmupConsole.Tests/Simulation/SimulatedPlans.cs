using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Simulation;

/// <summary>Random plans for the demo choir over its whole catalogue: any keys, tempos and lengths that a plan file may ask for.</summary>
internal static class SimulatedPlans
{
    private static readonly ChoirFolder Folder =
        ChoirFolder.Open(Path.Combine(Repository.Root, "plans-demo"), new SettingsFolder(Path.GetTempPath())).Value!;

    private static readonly IReadOnlyDictionary<string, Exercise> ById = Folder.Exercises.ToDictionary(exercise => exercise.Id);

    private static readonly string[] Limits =
    [
        LadderSpec.Everyone, LadderSpec.Everyone, LadderSpec.AnyPart, .. Folder.Choir.Parts.SelectMany(part => part.Groups.Append(part.Id)).Distinct(),
    ];

    internal static Content Next(Random random)
    {
        int steps = random.Next(30) == 0 ? 0 : 1 + random.Next(4);
        Plan plan = new()
        {
            Title = "Any evening",
            Rolling = random.Next(3) > 0,
            Steps = [.. Enumerable.Range(0, steps).Select(_ => Step(random))],
        };
        LoadedPlan loaded = new(plan, "any.yaml", steps == 0 ? "" : PlanFile.Write(plan));
        return new(Folder, loaded, WarmupBuilder.Build(Folder.Choir, plan, ById));
    }

    private static PlanStep Step(Random random)
    {
        Exercise exercise = Folder.Exercises[random.Next(Folder.Exercises.Count)];
        return new()
        {
            ExerciseId = exercise.Id,
            TalkSeconds = random.Next(3) == 0 ? random.Next(601) : null,
            Tempo = AnyTempo(random),
            LastTempo = exercise.IsSung ? AnyTempo(random) : null,
            Rounds = random.Next(3) == 0 ? 1 + random.Next(20) : null,
            BreathBeats = 1 + random.Next(8),
            Keys = Keys(random),
        };
    }

    private static Tempo? AnyTempo(Random random) =>
        random.Next(3) == 0 ? Tempo.FromBeatsPerMinute(random.Next(Tempo.SlowestBeatsPerMinute, Tempo.FastestBeatsPerMinute + 1)) : null;

    private static LadderSpec Keys(Random random) => new()
    {
        Start = random.Next(3) == 0 ? KeyStart(random) : null,
        Shape = (LadderShape)random.Next(4),
        Limit = Limits[random.Next(Limits.Length)],
        ReachPercent = random.Next(2) * random.Next(101),
        ToleranceSemitones = random.Next(13),
        MostKeys = random.Next(2) == 0 ? 1 + random.Next(24) : null,
    };

    private static Pitch KeyStart(Random random) => Pitch.MiddleC.Octaves(random.Next(-1, 2));
}
