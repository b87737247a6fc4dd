using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Benchmarks;

/// <summary>The demo choir with its plan of twelve steps, as the program loads it, and a run of it in virtual time.</summary>
internal static class DemoChoir
{
    private static readonly string Root = FindRoot();
    private static readonly SettingsFolder Settings = new(Path.Combine(Path.GetTempPath(), "warmup-benchmarks"));

    internal static readonly string PlanPath = Path.Combine(Root, "plans-demo", "plans", "2027-02-09.yaml");

    internal static readonly string CatalogueFolder = Path.Combine(Root, "src", "WarmupConsole.Storage", "Catalogue");

    internal static readonly ChoirFolder Folder = Open();

    internal static readonly LoadedPlan Plan = ReadPlan();

    internal static readonly Warmup Warmup = Build();

    internal static ChoirFolder Open() => ChoirFolder.Open(ChoirFolder.RootOf(PlanPath), Settings).Value!;

    internal static LoadedPlan ReadPlan() => Folder.ReadPlan(PlanPath).Value!;

    internal static Warmup Build() =>
        WarmupBuilder.Build(Folder.Choir, Plan.Plan, Folder.Exercises.ToDictionary(exercise => exercise.Id));

    /// <summary>The session while the first rung sounds, and a moment in it.</summary>
    internal static (LiveSession Session, Moment Now) InRung()
    {
        (LiveSession session, Moment now, _) = Lead(outcome => outcome.State == LiveState.Rung);
        return (session, now);
    }

    /// <summary>What a whole run records, with an alto mark in every third rung.</summary>
    internal static IReadOnlyList<SessionRecord> Records() =>
        [.. Lead(outcome => outcome.State == LiveState.Finished).Facts.Select((fact, i) => new SessionRecord(i + 1, DateTimeOffset.UnixEpoch, 1, new(i), fact))];

    // Space wherever the console waits for it, time wherever it does not.
    private static (LiveSession Session, Moment Now, IReadOnlyList<SessionEvent> Facts) Lead(Func<LiveSession, bool> isReached)
    {
        Moment now = new(1_000_000_000);
        LiveOutcome outcome = LiveMachine.Start(Warmup, now);
        List<SessionEvent> facts = [Started()];
        while (true)
        {
            facts.AddRange(outcome.Effects.OfType<LiveEffect.Record>().Select(effect => effect.Event));
            if (isReached(outcome.Session))
            {
                return (outcome.Session, now, facts);
            }

            LiveInput input = Next(outcome.Session, facts[^1]);
            now = input is LiveInput.TimePassed ? outcome.Session.NextWake!.Value : now;
            outcome = LiveMachine.Handle(outcome.Session, input, now);
        }
    }

    private static LiveInput Next(LiveSession session, SessionEvent last) => session switch
    {
        _ when last is RungStarted { Rung: var rung } && rung % 3 == 1 => new LiveInput.MarkKept("a f", session.AnchorAt(session.NextWake!.Value)),
        { State: LiveState.Ready or LiveState.Introduce or LiveState.Wait } => new LiveInput.Act(LiveAction.GoOn),
        _ => new LiveInput.TimePassed(),
    };

    private static RunStarted Started() => new("benchmark", Folder.Choir.Name, Path.GetFileName(PlanPath), Folder.ChoirYaml, Plan.Yaml, "");

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !Directory.Exists(Path.Combine(folder, "plans-demo")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new DirectoryNotFoundException("Run it from within the repository: there is no plans-demo above the program.");
    }
}
