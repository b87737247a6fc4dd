using System.ComponentModel;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// A player that is started when a port is first opened, and again when it ends unasked or gets stuck. The end is reported at once, so that the
/// run can hold; the new player opens the same port, ends whatever the old one left sounding, and takes what was handed over since
/// the last silence.
/// </summary>
public sealed class RestartingPlayer : IPlayer
{
    private readonly Lock _lock = new();
    private readonly Func<int, IPlayer> _start;
    private readonly IMonotonicClock _clock;
    private readonly RestartLimit _limit;
    private readonly List<(long Generation, IReadOnlyList<ScoreNote> Notes)> _missed = [];
    private IPlayer? _player;
    private PortChoice? _choice;
    private Timeline? _timeline;
    private long _generation;
    private int _starts;
    private bool _isUp;
    private bool _disposed;

    /// <param name="start">Starts a player; it is given the number of players started before it.</param>
    /// <param name="clock">Measures how often that happens.</param>
    public RestartingPlayer(Func<int, IPlayer> start, IMonotonicClock clock) => (_start, _clock, _limit) = (start, clock, new(clock));

    public event Action<PlayerReport>? Reported;

    public OnsetFigures? Onsets => _player?.Onsets;

    private IPlayer? Up => _isUp ? _player : null;

    public void Open(PortChoice choice)
    {
        lock (_lock)
        {
            bool isFirst = _choice is null;
            _choice = choice;
            if (isFirst)
            {
                Elsewhere("player start", Start);
            }
            else
            {
                Up?.Open(choice);
            }
        }
    }

    public void SetTimeline(long generation, Timeline timeline)
    {
        lock (_lock)
        {
            _timeline = timeline;
            Up?.SetTimeline(generation, timeline);
        }
    }

    public void Play(long generation, IReadOnlyList<ScoreNote> notes)
    {
        lock (_lock)
        {
            if (Up is { } player)
            {
                player.Play(generation, notes);
            }
            else
            {
                _missed.Add((generation, notes));
            }
        }
    }

    public void Silence(long generation)
    {
        lock (_lock)
        {
            _generation = generation;
            _missed.Clear();
            Up?.Silence(generation);
        }
    }

    public Moment? Pump(Moment now)
    {
        lock (_lock)
        {
            return Up?.Pump(now);
        }
    }

    public void Dispose()
    {
        IPlayer? up;
        lock (_lock)
        {
            (up, _isUp, _disposed) = (Up, false, true);
        }

        up?.Dispose(); // one that has ended is disposed of by the thread that replaces it
    }

    private IPlayer StartNext()
    {
        IPlayer player = _start(_starts++);
        player.Reported += report => OnReport(player, report);
        return player;
    }

    private void OnReport(IPlayer source, PlayerReport report)
    {
        if (report.Kind != PlayerReportKind.PlayerEnded)
        {
            Reported?.Invoke(report);
            return;
        }

        bool again;
        lock (_lock)
        {
            if (_disposed)
            {
                return;
            }

            _isUp = false;
            again = _limit.MayStartAgain();
        }

        Reported?.Invoke(report with { Sentence = again ? PlayerTexts.StartsAgain(report.Sentence) : PlayerTexts.GivenUp(report.Sentence) });
        Elsewhere("player restart", () => Replace(source, again));
    }

    /// <summary>On a thread of its own: starting a process takes longer than a call to a player may.</summary>
    private static void Elsewhere(string name, Action work) => new Thread(() => work()) { IsBackground = true, Name = name }.Start();

    private void Replace(IPlayer ended, bool again)
    {
        ended.Dispose();
        if (again)
        {
            Start();
        }
    }

    private void Start()
    {
        if (TryStart() is { } player)
        {
            HandOver(player);
        }
    }

    private IPlayer? TryStart()
    {
        try
        {
            return StartNext();
        }
        catch (Exception e) when (e is Win32Exception or IOException or InvalidOperationException)
        {
            Reported?.Invoke(new(PlayerReportKind.PlayerEnded, PlayerTexts.NotStarted(e.Message)));
            return null;
        }
    }

    private void HandOver(IPlayer player)
    {
        lock (_lock)
        {
            if (_disposed)
            {
                player.Dispose();
                return;
            }

            (_player, _isUp) = (player, true);
            if (_choice is { } choice)
            {
                player.Open(choice);
            }

            player.Silence(_generation);
            if (_timeline is { } timeline)
            {
                player.SetTimeline(_generation, timeline);
            }

            _missed.ForEach(missed => player.Play(missed.Generation, missed.Notes));
            _missed.Clear();
            player.Pump(_clock.Now);
        }
    }
}
