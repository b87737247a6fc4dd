using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

/// <summary>One event of each kind, and logs made of them.</summary>
internal static class LogSamples
{
    internal static readonly DateTimeOffset Evening = new(2027, 2, 16, 19, 30, 5, 123, TimeSpan.FromHours(1));

    internal static readonly RunStarted Start = new("0.1.0", "The Lantern Quay Singers", "2027-02-16.yaml", "format: 1\nname: \"x\"\n", "", "");

    internal static readonly MarkMade Mark = new(1, 1, 0, "altos ♭ in \"E\"", ["alto"], "flat", "E4", true, null, "top", 987_654_321);

    internal static readonly IReadOnlyList<SessionEvent> EachKind =
    [
        Start,
        new StepStarted(0, "five-note-scale", [60, 61, 62]),
        new TimelineChanged(88_000, 0, 1_000_000_000),
        new RungStarted(0, 0, "Eb4", 63, 88_000, ["soprano", "alto"], [63, 63], [70, 70]),
        Mark,
        Mark with { Id = 2, Kind = null, Key = null, KeyNamed = false, Pitch = 64, Place = "" },
        new MarkMoved(1, 1, 2),
        new MarkWorded(3, "b l", ["bass"], "late", "E4", false, null, ""),
        new MarkUndone(2),
        new HoldChanged("silenced"),
        new LadderChanged(0, 1, [60, 61, 60], "one more key"),
        new RungEnded(0, 0, true),
        new RoundStarted(1, 2),
        new StepAdded(2, "siren", "format: 1\n"),
        new OrderChanged([0, 2, 1], "put in next"),
        new CutTaken(2, "siren", 5, 48),
        new FollowChanged(true),
        new StepsOver(2),
        new PartsChosen(0, ["alto", "bass"]),
        new OctaveChanged(0, "bass", -1),
        new BreathChanged(0, 3),
        new AccompanimentChanged(0, "bass-and-chord"),
        new LeadInStarted(0, 0),
        new TonightTold(["tenor"], [2], [true], [false], "low", "t2 colds, tired"),
        new RehearsalMarked("Hymn 3 a f", "Hymn", "3", ["alto"], "flat", null, "", 5),
        new RunResumed(1, 2),
        new RunEnded("finished"),
    ];

    internal static byte[] Log(params IReadOnlyList<SessionEvent> events)
    {
        FaultyFile file = new();
        using SessionLogWriter writer = new(file, LogPosition.New);
        Add(writer, events);
        Assert.Null(writer.Flush());
        return file.Bytes;
    }

    internal static void Add(SessionLogWriter writer, params IReadOnlyList<SessionEvent> events)
    {
        foreach (SessionEvent fact in events)
        {
            writer.Add(fact, Evening, new Moment(123_456_789));
        }
    }

    internal static IReadOnlyList<int> LineEnds(byte[] log) => [.. log.Index().Where(at => at.Item == '\n').Select(at => at.Index + 1)];
}
