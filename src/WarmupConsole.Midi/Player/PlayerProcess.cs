using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Player;

/// <summary>What the child process does: it plays until its input or a signal ends it, and is silent before it goes.</summary>
public static class PlayerProcess
{
    private const int Failed = 70;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan Rounds = TimeSpan.FromSeconds(0.25);

    /// <returns>The exit code.</returns>
    public static int Run(Stream input, Stream output, Func<PortChoice, PortOpening> openPort, IWaiter waiter)
    {
        Rehearse();
        PlayerEngine engine = new(openPort);
        PlayerLoop loop = new(engine, waiter, input, output);
        using Timer force = new(_ => Environment.Exit(Failed));
        using PortWatcher watcher = new(() => engine.Watched, new PortLookout(BuiltInSound.Plays).Names, loop.See);
        watcher.Start();
        using Timer watch = new(_ => EndIfStuck(loop), null, Rounds, Rounds);
        loop.InputEnded += () => EndSoon(force);
        using EndSignals handlers = new(() =>
        {
            EndSoon(force);
            loop.Stop();
        });
        try
        {
            loop.Run();
            return 0;
        }
        catch (Exception e)
        {
            // Caught so that the loop's own ending has silenced the port; the host shows this line.
            Console.Error.WriteLine($"{e.GetType().Name}: {e.Message}");
            return Failed;
        }
    }

    // Code is compiled when it first runs; the first chord would be tens of milliseconds late for that.
    private static void Rehearse()
    {
        VirtualClock clock = new();
        using InProcessPlayer player = new(clock, _ => new(new NullPort(), true, ""));
        player.Open(PortChoice.None);
        player.SetTimeline(0, new(PortTest.Tempo, Beats.Zero, clock.Now));
        player.Play(0, PortTest.Notes());
        player.Advance(clock.Now + TimeSpan.FromMinutes(1));
        player.Silence(1);
    }

    // The host notices an end, not a halt; so a player that cannot go on ends, and is started again.
    private static void EndIfStuck(PlayerLoop loop)
    {
        if (loop.IsStuck)
        {
            Console.Error.WriteLine(PlayingTexts.PortStuck);
            Environment.Exit(Failed);
        }
    }

    // A driver may block for ever, as JACK's does when its server is killed; then only force ends the process.
    private static void EndSoon(Timer force)
    {
        try
        {
            force.Change(Patience, Timeout.InfiniteTimeSpan);
        }
        catch (ObjectDisposedException)
        {
            // It has ended by itself.
        }
    }
}
