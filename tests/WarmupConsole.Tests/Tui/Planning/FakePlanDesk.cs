using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Tui.Planning;

namespace WarmupConsole.Tests.Tui.Planning;

/// <summary>A desk with the catalogue and an invented choir; it remembers what was asked of it.</summary>
internal sealed class FakePlanDesk : IPlanDesk
{
    public event Action? Changed;

    public required PlanDraft Start { get; init; }

    public string Name => "2027-02-16.yaml";

    public required IReadOnlyList<Exercise> Exercises { get; init; }

    public string Sound { get; private set; } = "";

    public List<PlanDraft> Saved { get; } = [];

    public List<string> Played { get; } = [];

    public int Silences { get; private set; }

    public IReadOnlyList<string> Lost { get; set; } = [];

    public IReadOnlyList<PlanRemark> Check(PlanDraft draft) => PlanCheck.Check(draft.Warmup);

    public IReadOnlyList<string> LostComments(PlanDraft draft) => Lost;

    public (bool IsSaved, string Sentence) Save(PlanDraft draft)
    {
        Saved.Add(draft);
        return (true, "Written: plans/2027-02-16.yaml");
    }

    public void Play(WarmupStep step)
    {
        Played.Add(step.Exercise.Id);
        Sound = "Playing on a test piano.";
        Changed?.Invoke();
    }

    public void Silence() => Silences++;

    public void Tick()
    {
    }
}
