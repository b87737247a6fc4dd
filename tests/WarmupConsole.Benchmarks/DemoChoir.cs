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

    internal static Warmup Build() => Build(Plan.Plan);

    internal static Warmup Build(Plan plan) => WarmupBuilder.Build(Folder.Choir, plan, Folder.Exercises.ToDictionary(exercise => exercise.Id));

    /// <summary>Every plan of the demo, made ready.</summary>
    internal static IReadOnlyList<Warmup> Warmups { get; } =
        [.. Directory.GetFiles(Path.GetDirectoryName(PlanPath)!, "*.yaml").Order().Select(path => Build(Folder.ReadPlan(path).Value!.Plan))];

    /// <summary>The session while the first rung sounds, and a moment in it.</summary>
    internal static (LiveSession Session, Moment Now) InRung()
    {
        (LiveSession session, Moment now, _) = Lead(Warmup, _ => null, outcome => outcome.State == LiveState.Rung);
        return (session, now);
    }

    /// <summary>What a whole run records, with an alto mark in every third rung.</summary>
    internal static IReadOnlyList<SessionRecord> Records() =>
        [.. Run(Warmup, rung => rung.Rung % 3 == 1 ? "a f" : null).Select((fact, i) => new SessionRecord(i + 1, DateTimeOffset.UnixEpoch, 1, fact.At, fact.Event))];

    /// <summary>What a whole run of a plan records.</summary>
    /// <param name="warmup">The plan.</param>
    /// <param name="heard">What is typed in a rung, or null.</param>
    internal static IReadOnlyList<(Moment At, SessionEvent Event)> Run(Warmup warmup, Func<RungStarted, string?> heard) =>
        Lead(warmup, heard, outcome => outcome.State == LiveState.Finished).Facts;

    // Space wherever the console waits for it, time wherever it does not.
    private static (LiveSession Session, Moment Now, IReadOnlyList<(Moment At, SessionEvent Event)> Facts) Lead(
        Warmup warmup, Func<RungStarted, string?> heard, Func<LiveSession, bool> isReached)
    {
        Moment now = new(1_000_000_000);
        LiveOutcome outcome = LiveMachine.Start(warmup, now);
        List<(Moment At, SessionEvent Event)> facts = [(now, Started())];
        while (true)
        {
            facts.AddRange(outcome.Effects.OfType<LiveEffect.Record>().Select(effect => (now, effect.Event)));
            if (isReached(outcome.Session))
            {
                return (outcome.Session, now, facts);
            }

            LiveInput input = Next(outcome.Session, facts[^1].Event, heard);
            now = input is LiveInput.TimePassed ? outcome.Session.NextWake!.Value : now;
            outcome = LiveMachine.Handle(outcome.Session, input, now);
        }
    }

    private static LiveInput Next(LiveSession session, SessionEvent last, Func<RungStarted, string?> heard) => session switch
    {
        _ when last is RungStarted rung && heard(rung) is { } text => new LiveInput.MarkKept(text, session.AnchorAt(session.NextWake!.Value)),
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
