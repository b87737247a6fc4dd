using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.App.Running;

/// <summary>The real engine in virtual time, which ends when it is told to, as a player's process does: silent, and told of once.</summary>
internal sealed class MortalPlayer : IPlayer
{
    private readonly InProcessPlayer _inner;

    internal MortalPlayer(VirtualClock clock)
    {
        Port = new(clock);
        _inner = new(clock, _ => new(Port, true, "Playing."));
        _inner.Reported += report => Reported?.Invoke(report);
    }

    public event Action<PlayerReport>? Reported;

    public OnsetFigures? Onsets => _inner.Onsets;

    internal RecordingPort Port { get; }

    internal IEnumerable<string> Sent => Port.Sent.Select(message => Convert.ToHexString(message.Bytes.Span));

    public void Open(PortChoice choice) => _inner.Open(choice);

    public void SetTimeline(long generation, Timeline timeline) => _inner.SetTimeline(generation, timeline);

    public void Play(long generation, IReadOnlyList<ScoreNote> notes) => _inner.Play(generation, notes);

    public void Silence(long generation) => _inner.Silence(generation);

    public Moment? Pump(Moment now) => _inner.Pump(now);

    public void Dispose() => _inner.Dispose();

    internal void Advance(Moment to) => _inner.Advance(to);

    internal void Die() => Reported?.Invoke(new(PlayerReportKind.PlayerEnded, "The player ended by itself."));
}
