using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Sessions.TakeAlong;

/// <summary>The plans of the demo, made ready; and one with every exercise that there is.</summary>
internal static class DemoWarmups
{
    internal static ChoirFolder Folder { get; } =
        ChoirFolder.Open(Path.Combine(Repository.Root, "plans-demo"), new SettingsFolder(Path.GetTempPath())).Value!;

    internal static string[] Names { get; } = ["2027-02-02.yaml", "2027-02-09.yaml", "2027-02-16.yaml"];

    internal static Warmup Of(string name) => Build(Folder.ReadPlan(Path.Combine(Folder.Root, "plans", name)).Value!.Plan);

    internal static Warmup Every { get; } = Build(new() { Title = "Everything", Steps = [.. Folder.Exercises.Select(exercise => new PlanStep { ExerciseId = exercise.Id })] });

    internal static Warmup Build(Plan plan) => WarmupBuilder.Build(Folder.Choir, plan, Folder.Exercises.ToDictionary(exercise => exercise.Id));
}
