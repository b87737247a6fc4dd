using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.App.Running;

/// <summary>A session with its piano and its log, wired: what the one reports, the others and the screen learn.</summary>
internal sealed class LiveRun
{
    private readonly IPlayer _player;
    private readonly PortChoice _port;
    private readonly RunLog _log;
    private volatile bool _portWasLost;
    private int _isClosed;

    /// <param name="start">The session and its first effects.</param>
    /// <param name="clock">The clock of host and player.</param>
    /// <param name="player">The piano, with no port yet.</param>
    /// <param name="port">To be opened by <see cref="OpenPort"/>.</param>
    /// <param name="log">The session log.</param>
    internal LiveRun(LiveOutcome start, IMonotonicClock clock, IPlayer player, PortChoice port, RunLog log)
    {
        (_player, _port, _log) = (player, port, log);
        Host = new(start, clock, player, Record);
        Host.Show(_ => new(AppTexts.NothingSounds, log.Path ?? AppTexts.NoLogFile, log.Path is null));
        player.Reported += OnReport;
        log.Thread.MarksFlushed += facts => Host.Post(new LiveInput.MarksFlushed(facts));
        log.Thread.Flushed += LookAhead;
        log.Thread.Failed += OnLogFailed;
        log.Thread.Recovered += () => Host.Show(status => status with { Log = log.Path ?? AppTexts.NoLogFile, LogInTrouble = false });
    }

    internal SessionHost Host { get; }

    /// <summary>Takes the marks of the rehearsal, without waiting.</summary>
    internal Action<RehearsalMarked>? Rehearsed { get; set; }

    /// <summary>What failed when everything was closed, such as a recording that could not be written: the screen is gone then.</summary>
    internal string? TroubleAtEnd { get; private set; }

    /// <summary>Once, when somebody is there to be heard.</summary>
    internal void OpenPort()
    {
        _player.Open(_port);
        _player.Silence(Host.Session.Generation); // what sounded when the machine before went down sounds there still
    }

    /// <summary>Silence first, then the log. May be called twice, from any thread.</summary>
    internal void Close()
    {
        if (Interlocked.Exchange(ref _isClosed, 1) == 0)
        {
            _player.Dispose();
            _log.Dispose();
        }
    }

    private void Record(SessionEvent fact)
    {
        _log.Record(fact);
        if (fact is RehearsalMarked mark)
        {
            Rehearsed?.Invoke(mark);
        }
    }

    /// <summary>Once the end is on disk, and after each mark that follows. On the log's thread: nothing waits for it any more.</summary>
    private void LookAhead()
    {
        if (Host.Session is { State: LiveState.Finished, Warmup: { } warmup } && _log.Path is { } path)
        {
            AheadCard ahead = AheadLook.Of(path, warmup);
            Host.Show(status => status with { Ahead = ahead });
        }
    }

    private void OnReport(PlayerReport report)
    {
        if (Volatile.Read(ref _isClosed) != 0 && report.Kind == PlayerReportKind.PortFailed)
        {
            TroubleAtEnd = report.Sentence;
        }

        Host.Show(status => status with { Port = report.Sentence });
        if (report.Kind is PlayerReportKind.PortLost or PlayerReportKind.PlayerEnded)
        {
            _portWasLost = report.Kind == PlayerReportKind.PortLost;
            Host.Post(new LiveInput.Trouble(report.Sentence));
        }
        else if (report.Kind != PlayerReportKind.PortOpened)
        {
            Host.Post(new LiveInput.Warning(report.Sentence));
        }
        else if (_portWasLost)
        {
            _portWasLost = false;
            Host.Post(new LiveInput.News(report.Sentence));
        }
    }

    private void OnLogFailed(string sentence)
    {
        Host.Show(status => status with { Log = sentence, LogInTrouble = true });
        Host.Post(new LiveInput.Warning(sentence));
    }
}
