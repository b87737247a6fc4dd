using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

/// <summary>A console whose session is set by hand; it remembers what was posted.</summary>
internal sealed class FakeLiveConsole(LiveSession session) : ILiveConsole
{
    public event Action? Changed;

    public LiveSession Session { get; private set; } = session;

    public ConsoleStatus Status { get; set; } = new("Sound: the piano on port 2", "sessions/2027-02-16T19-00.jsonl", false);

    public Moment Now { get; set; } = LiveFixture.Now;

    public List<LiveInput> Posted { get; } = [];

    public Dictionary<LiveAction, string> Refused { get; } = [];

    public IReadOnlyList<Exercise> Exercises { get; set; } = [];

    public List<(string Exercise, bool Now)> Inserted { get; } = [];

    public void Insert(Exercise exercise, bool now) => Inserted.Add((exercise.Id, now));

    public PlayedKey? NewestKey { get; set; }

    public List<PedalUse?> Learnt { get; } = [];

    public void Learn(PedalUse? use) => Learnt.Add(use);

    public void Show(LiveSession session)
    {
        Session = session;
        Changed?.Invoke();
    }

    public bool GivesTour { get; init; }

    public int Tours { get; private set; }

    public void TourIsOver() => Tours++;

    public bool IsPlanAsked { get; private set; }

    public void AskForPlan() => IsPlanAsked = true;

    public void FirstPictureStands() => Pictures++;

    public int Pictures { get; private set; }

    public void Post(LiveInput input) => Posted.Add(input);

    public string? WhyNot(LiveAction action) => Refused.GetValueOrDefault(action);
}
