using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// The host's end of the player protocol. Two threads write and read; no call waits for the player. When the player ends
/// or gets stuck this is reported once, and further calls do nothing.
/// </summary>
public sealed class PlayerClient : IPlayer
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly SilenceWatch _silences = new(Patience);
    private readonly IPlayerLink _link;
    private readonly NoteFeed _feed = new();
    private readonly Outbox _outbox = new();
    private readonly Thread _writing;
    private readonly Thread _reading;
    private volatile Frame.Onsets? _onsets;
    private volatile Frame.Silenced? _lastSilence;
    private bool _started;
    private bool _ended;

    public PlayerClient(IPlayerLink link)
    {
        _link = link;
        _writing = new(WriteFrames) { IsBackground = true, Name = "to player" };
        _reading = new(ReadReports) { IsBackground = true, Name = "from player" };
        Send(new Frame.Hello(ProtocolConstants.Version));
    }

    public event Action<PlayerReport>? Reported;

    public OnsetFigures? Onsets => _onsets?.Figures;

    /// <summary>When the last silence had been sent to the port; null before the first.</summary>
    public Moment? LastSilence => _lastSilence?.At;

    public void Open(PortChoice choice)
    {
        _silences.Opening();
        Send(new Frame.OpenPort(choice));
        if (!_started)
        {
            _started = true;
            _reading.Start();
            _writing.Start();
        }
    }

    public void SetTimeline(long generation, Timeline timeline)
    {
        _feed.SetTimeline(generation, timeline);
        Send(new Frame.SetTimeline(generation, timeline));
    }

    public void Play(long generation, IReadOnlyList<ScoreNote> notes) => _feed.Add(generation, notes);

    public void Silence(long generation)
    {
        _feed.Forget(generation);
        _outbox.Forget(generation);
        _silences.Asked(generation);
        Send(new Frame.Silence(generation));
    }

    public Moment? Pump(Moment now)
    {
        foreach (Frame.Notes frame in _feed.TakeNear(now))
        {
            Send(frame);
        }

        if (_silences.IsOverdue(now))
        {
            End(PlayerTexts.Stuck);
        }

        return Volatile.Read(ref _ended) ? null : _silences.NextLook(_feed.NextTime);
    }

    public void Dispose()
    {
        bool asked = !Interlocked.Exchange(ref _ended, true);
        _outbox.TryAdd(new Frame.Quit());
        _outbox.Close();
        if (!_started)
        {
            _link.ToPlayer.Dispose();
        }
        else if (asked)
        {
            _reading.Join(Patience); // the player's last reports: onsets, a recording that could not be written
        }

        _link.Dispose();
    }

    private void Send(Frame frame)
    {
        if (!_outbox.TryAdd(frame))
        {
            End(PlayerTexts.Stuck);
        }
    }

    private void WriteFrames()
    {
        FrameWriter writer = new(_link.ToPlayer);
        try
        {
            while (_outbox.Take() is { } frame)
            {
                writer.Write(frame);
            }

            _link.ToPlayer.Dispose();
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // The player is gone; its own stream ends too, and the reading thread tells.
        }
    }

    private void ReadReports()
    {
        FrameReader reader = new(_link.FromPlayer);
        try
        {
            while (reader.Read() is { } frame)
            {
                Take(frame);
            }

            EndByItself();
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            EndByItself();
        }
        catch (ProtocolException e)
        {
            End(PlayerTexts.NotUnderstood(e.Message));
        }
    }

    private void Take(Frame frame)
    {
        switch (frame)
        {
            case Frame.Silenced silenced:
                _lastSilence = silenced;
                _silences.Answered(silenced.Generation);
                break;
            case Frame.Onsets onsets:
                _onsets = onsets;
                break;
            case Frame.PortOpened or Frame.PortFailed or Frame.PortLost:
                _silences.Opened();
                Tell(PlayerReports.From(frame));
                break;
            default:
                Tell(PlayerReports.From(frame));
                break;
        }
    }

    private void EndByItself()
    {
        if (!Volatile.Read(ref _ended))
        {
            End(PlayerTexts.Ended(_link.LastWords));
        }
    }

    private void End(string sentence)
    {
        if (!Interlocked.Exchange(ref _ended, true))
        {
            _outbox.Close();
            _link.Kill();
            Tell(new(PlayerReportKind.PlayerEnded, sentence));
        }
    }

    private void Tell(PlayerReport? report)
    {
        if (report is not null)
        {
            Reported?.Invoke(report);
        }
    }
}
