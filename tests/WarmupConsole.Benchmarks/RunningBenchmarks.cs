using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Benchmarks;

/// <summary>What happens while it plays: the machine's answer, a picture, a mark on its way to the disk.</summary>
internal static class RunningBenchmarks
{
    private static readonly (LiveSession Session, Moment Now) Rung = DemoChoir.InRung();

    private static readonly ScreenModel Model = new(Rung.Session, new("Playing on a stage piano.", "session log", false), MarkLine.Closed, Rung.Now)
    {
        Keys = [.. KeyTable.Rows.Select(row => new KeyHint(row, row.Action is { } action ? LiveMachine.WhyNot(Rung.Session, action, Rung.Now) : null))],
    };

    internal static IEnumerable<Benchmark> All =>
    [
        new("live machine: silence in a rung", 10, () => Handle(new LiveInput.Act(LiveAction.Silence))),
        new("live machine: faster in a rung", 10, () => Handle(new LiveInput.Act(LiveAction.Faster))),
        new("live machine: a mark in a rung", 10, () => Handle(new LiveInput.MarkKept("a f", Rung.Session.AnchorAt(Rung.Now)))),
        new("picture at 80x24", 1, () => Draw(80, 24)),
        new("picture at 120x36", 1, () => Draw(120, 36)),
        new("picture at 200x60", 1, () => Draw(200, 60)),
    ];

    /// <summary>A mark written and flushed to the disk of a folder, which is left with the log in it.</summary>
    internal static IEnumerable<Benchmark> LogIn(string folder)
    {
        SessionLogFile log = SessionLogFile.Create(folder, DateTimeOffset.UnixEpoch, "benchmark").File!;
        MarkMade mark = DemoChoir.Records().Select(record => record.Event).OfType<MarkMade>().First();
        return
        [
            new("log: a mark written", 1, () => Keep(log.Writer, mark, log.Writer.Write)),
            new("log: a mark written and flushed to disk", 1, () => Keep(log.Writer, mark, log.Writer.Flush)),
        ];
    }

    private static long Keep(SessionLogWriter writer, MarkMade mark, Func<string?> write)
    {
        writer.Add(mark, DateTimeOffset.UnixEpoch, Rung.Now);
        return write() is null ? writer.LastSequence : throw new IOException("The log cannot be written.");
    }

    private static long Handle(LiveInput input)
    {
        long effects = 0;
        for (int i = 0; i < 10; i++)
        {
            effects += LiveMachine.Handle(Rung.Session, input, Rung.Now).Effects.Count;
        }

        return effects;
    }

    private static long Draw(int width, int height) => ScreenPresenter.Draw(Model, width, height).Width;
}
