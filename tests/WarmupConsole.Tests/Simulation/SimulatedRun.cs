using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Storage.SessionLogs;

namespace WarmupConsole.Tests.Simulation;

/// <summary>One process of the console: real host, log and wiring between a simulated player and a file that may fail.</summary>
internal sealed class SimulatedRun
{
    /// <param name="start">The session and its first effects.</param>
    /// <param name="clocks">The two clocks.</param>
    /// <param name="player">The piano's player.</param>
    /// <param name="file">The file under the log.</param>
    /// <param name="log">Where the log goes on, and its first record when it is new.</param>
    internal SimulatedRun(
        LiveOutcome start,
        (VirtualClock Clock, TimeProvider Wall) clocks,
        SimulatedPlayer player,
        FaultyFile file,
        (LogPosition Position, RunStarted? Start) log)
    {
        (Player, File) = (player, file);
        RunLog runLog = new(new SessionLogWriter(file, log.Position), log.Start, clocks.Wall, clocks.Clock);
        LogThread = runLog.Thread;
        Live = new(start, clocks.Clock, player, PortChoice.First, runLog);
        Live.Host.Posted += () => IsWanted = true;
        Live.OpenPort();
        Mirror = new(file);
    }

    internal SimulatedPlayer Player { get; }

    internal FaultyFile File { get; }

    internal LiveRun Live { get; }

    internal SessionLogThread LogThread { get; }

    internal LogMirror Mirror { get; }

    internal LiveSession Session => Live.Host.Session;

    /// <summary>Something was posted to the host.</summary>
    internal bool IsWanted { get; private set; } = true;

    /// <summary>When the host asked to be called again.</summary>
    internal Moment? Wake { get; private set; }

    internal void StepHost()
    {
        IsWanted = false;
        Wake = Live.Host.Step();
    }

    /// <summary>The log's thread gets its turn. On a disk that works, what it holds then folds to what is shown.</summary>
    internal void DrainLog()
    {
        LogThread.Drain();
        Mirror.Follow();
        if (!File.RefusesWrites && !File.RefusesFlush)
        {
            Law.Holds(LogMirror.AreSame(Mirror.Facts, Session.Facts()), "The log does not fold to what is shown", new Difference(Mirror, Session));
        }
    }

    private sealed record Difference(LogMirror Mirror, LiveSession Session)
    {
        public override string ToString() => $"log: {LogMirror.Words(Mirror.Facts)}; shown: {LogMirror.Words(Session.Facts())}";
    }
}
