using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>A choir with a plan, made ready.</summary>
/// <param name="Folder">The choir.</param>
/// <param name="Plan">The plan with its text; an empty one for an open run.</param>
/// <param name="Warmup">Both made ready.</param>
internal sealed record Content(ChoirFolder Folder, LoadedPlan Plan, Warmup Warmup)
{
    private const string ChoirFileName = "choir.yaml";

    /// <summary>
    /// The plan named, in the choir folder around it (or the one named), by its path or by its day alone; without a plan the newest one
    /// of the folder, else the built-in one; outside any choir folder the built-in choir.
    /// </summary>
    internal static FileRead<Content> Load(Composition composition, string? planPath, string? choirPath)
    {
        if (Directory.Exists(planPath))
        {
            return Load(composition, null, planPath);
        }

        bool isName = planPath is not null && !File.Exists(planPath);
        FileRead<ChoirFolder> folder = Open(composition, isName ? null : planPath, choirPath);
        if (!folder.IsGood)
        {
            return new(null, folder.Problems);
        }

        string? path = isName ? folder.Value.PlanNamed(planPath!) : planPath ?? folder.Value.NewestPlan;
        if (isName && path is null)
        {
            return new(null, [FileProblem.Whole(planPath!, AppTexts.NoSuchPlan)]);
        }

        FileRead<LoadedPlan> plan = path is null ? folder.Value.ReadBuiltInPlan() : folder.Value.ReadPlan(path);
        return plan.IsGood ? new(Ready(folder.Value, plan.Value), []) : new(null, plan.Problems);
    }

    /// <summary>The choir alone, with a plan of no steps: clocks and marks only.</summary>
    internal static FileRead<Content> LoadOpen(Composition composition, string? choirPath)
    {
        FileRead<ChoirFolder> folder = Open(composition, null, choirPath);
        return folder.IsGood
            ? new(Ready(folder.Value, new(new() { Title = AppTexts.OpenTitle, Steps = [] }, "", "")), [])
            : new(null, folder.Problems);
    }

    /// <summary>The folder of a plan, the folder named, the folder we are in, or the built-in choir.</summary>
    internal static FileRead<ChoirFolder> Open(Composition composition, string? planPath, string? choirPath)
    {
        string root = choirPath ?? (planPath is null ? composition.CurrentFolder : ChoirFolder.RootOf(planPath));
        bool isChoir = File.Exists(Path.Combine(root, ChoirFileName));
        return (planPath, choirPath) switch
        {
            (null, null) when !isChoir => ChoirFolder.OpenBuiltIn(composition.Settings, composition.Today),
            ({ } plan, null) when !isChoir => new(null, [FileProblem.Whole(plan, AppTexts.NotInChoirFolder)]),
            _ => ChoirFolder.Open(root, composition.Settings, composition.Today),
        };
    }

    /// <summary>False for the choir that comes with the program: it has no folder of its own.</summary>
    internal bool IsInFolder => File.Exists(Path.Combine(Folder.Root, ChoirFileName));

    /// <summary>The exercises that the plan uses, each once, in the order of the plan.</summary>
    internal IEnumerable<Exercise> UsedExercises => Warmup.Steps.Select(step => step.Exercise).DistinctBy(exercise => exercise.Id);

    /// <summary>The first record of the log: everything needed to understand it later.</summary>
    internal RunStarted StartRecord(string version) => new(
        version,
        Folder.Choir.Name,
        Path.GetFileName(Plan.Path),
        Folder.ChoirYaml,
        Plan.Yaml,
        Warmup.Steps.Count == 0 ? "" : ExerciseFile.Write(UsedExercises));

    private static Content Ready(ChoirFolder folder, LoadedPlan plan) =>
        new(folder, plan, WarmupBuilder.Build(folder.Choir, plan.Plan, folder.Exercises.In(plan.Plan)));
}
