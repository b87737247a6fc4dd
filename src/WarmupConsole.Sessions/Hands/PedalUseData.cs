using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Sessions.Hands;

/// <summary>One row for each use: its name in settings, its words, and what it asks of the session.</summary>
public static class PedalUseData
{
    private static readonly (PedalUse Use, string Id, string Words, LiveInput Input)[] Rows =
    [
        (PedalUse.GoOn, "go-on", "go on", new LiveInput.Act(LiveAction.GoOn)),
        (PedalUse.Again, "again", "again", new LiveInput.Act(LiveAction.Repeat)),
        (PedalUse.TurnRound, "turn-round", "turn round", new LiveInput.Act(LiveAction.TurnRound)),
        (PedalUse.Silence, "silence", "silence", new LiveInput.Act(LiveAction.Silence)),
        (PedalUse.Pin, "pin", "pin", new LiveInput.PinMoment()),
    ];

    public static IReadOnlyList<PedalUse> All { get; } = [.. Rows.Select(row => row.Use)];

    public static string Id(PedalUse use) => Rows[(int)use].Id;

    public static string Words(PedalUse use) => Rows[(int)use].Words;

    public static LiveInput Input(PedalUse use) => Rows[(int)use].Input;
}
