using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Simulation;

/// <summary>
/// The real engine behind the real protocol's bytes, in virtual time. The player can be late, and it can die and be started again as
/// its keeper does: port, silence and timeline first.
/// </summary>
internal sealed class SimulatedPlayer : IPlayer
{
    private readonly MemoryStream _bytes = new();
    private readonly FrameWriter _writer;
    private readonly FrameReader _reader;
    private readonly VirtualClock _clock;
    private readonly SimulatedPiano _piano;
    private readonly ScoreModel _score;
    private InProcessPlayer? _inner;
    private Timeline? _timeline;
    private long _generation;
    private Moment _lateUntil;

    internal SimulatedPlayer(VirtualClock clock, SimulatedPiano piano, ScoreModel score)
    {
        (_clock, _piano, _score) = (clock, piano, score);
        (_writer, _reader) = (new(_bytes), new(_bytes));
        _inner = NewPlayer();
    }

    public event Action<PlayerReport>? Reported;

    public OnsetFigures? Onsets => _inner?.Onsets;

    internal bool IsDead => _inner is null;

    public void Open(PortChoice choice)
    {
        _score.ChangePort();
        _inner?.Open(Travelled(new Frame.OpenPort(choice)).Choice);
    }

    public void SetTimeline(long generation, Timeline timeline)
    {
        _timeline = timeline;
        Frame.SetTimeline frame = Travelled(new Frame.SetTimeline(generation, timeline));
        _score.SetTimeline(frame.Generation, frame.Timeline);
        _inner?.SetTimeline(frame.Generation, frame.Timeline);
    }

    public void Play(long generation, IReadOnlyList<ScoreNote> notes)
    {
        foreach (ScoreNote[] some in notes.Chunk(ProtocolConstants.MostNotesInFrame).Where(_ => _inner is not null))
        {
            Frame.Notes frame = Travelled(new Frame.Notes(generation, some));
            _score.Add(frame.Generation, frame.List);
            _inner?.Play(frame.Generation, frame.List);
        }
    }

    public void Silence(long generation)
    {
        Law.Holds(generation > _generation, "Generations do not grow", generation);
        _generation = generation;
        SilenceAgain();
    }

    public Moment? Pump(Moment now) => _inner?.Pump(now);

    /// <summary>Lets time pass up to a moment; unless the player is late, it sends everything at its due time.</summary>
    /// <returns>True when it has done all that was due.</returns>
    internal bool PassTo(Moment moment)
    {
        Moment wakes = _lateUntil > _clock.Now ? _lateUntil : _clock.Now;
        _clock.MoveTo(wakes < moment ? wakes : moment);
        if (_inner is null || wakes > moment)
        {
            _clock.MoveTo(moment);
            return false;
        }

        _inner.Advance(moment);
        _score.CaughtUp(moment, _piano);
        return true;
    }

    /// <summary>The player's process is not run for a while.</summary>
    internal void BeLate(TimeSpan by) => _lateUntil = _clock.Now + by;

    /// <summary>The player's process ends: by itself, and then silent, or killed.</summary>
    internal void Die(bool killed)
    {
        InProcessPlayer? dying = _inner;
        _inner = null;
        if (!killed)
        {
            dying?.Dispose();
        }

        _score.Reset();
        Reported?.Invoke(new(PlayerReportKind.PlayerEnded, "The player ended."));
    }

    /// <summary>The port is back: whatever sounds there still is ended.</summary>
    internal void Reopen()
    {
        Open(PortChoice.First);
        SilenceAgain();
    }

    internal void StartAgain()
    {
        _score.Reset();
        _inner = NewPlayer();
        Reopen();
        if (_timeline is { } timeline)
        {
            SetTimeline(_generation, timeline);
        }
    }

    /// <summary>The console is gone: the pipe ends, and so does the player, silent.</summary>
    public void Dispose()
    {
        _inner?.Dispose();
        _inner = null;
    }

    private void SilenceAgain()
    {
        _score.Silence(_generation);
        _inner?.Silence(Travelled(new Frame.Silence(_generation)).Generation);
    }

    private InProcessPlayer NewPlayer()
    {
        InProcessPlayer player = new(_clock, _piano.Open);
        player.Reported += report =>
        {
            Law.Holds(report.Kind != PlayerReportKind.NotesRefused, report.Sentence);
            Reported?.Invoke(report);
        };
        return player;
    }

    private T Travelled<T>(T frame)
        where T : Frame
    {
        _bytes.SetLength(0);
        _writer.Write(frame);
        _bytes.Position = 0;
        return (T)_reader.Read()!;
    }
}
