using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Storage;

namespace WarmupConsole.Tests.Tui.Planning;

/// <summary>The planning screen over a plan of the demo choir.</summary>
internal static class PlanFixture
{
    internal static FakePlanDesk Desk()
    {
        using TemporaryFolder settings = new();
        ChoirFolder folder = ChoirFolder.Open(Path.Combine(Repository.Root, "plans-demo"), new SettingsFolder(settings.Root), new(2027, 2, 9)).Value!;
        LoadedPlan plan = folder.ReadPlan(Path.Combine(folder.Root, "plans", "2027-02-09.yaml")).Value!;
        return new()
        {
            Start = PlanDraft.Of(folder.Choir, plan.Plan, folder.Exercises.ToDictionary(exercise => exercise.Id)),
            Exercises = folder.Exercises,
        };
    }
}
