using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Ports;

/// <summary>Keeps every message and its moment.</summary>
public sealed class RecordingPort(IMonotonicClock clock) : IMidiPort
{
    private readonly List<TimedMessage> _sent = [];

    public string Name => PortTexts.Recording;

    public IReadOnlyList<TimedMessage> Sent => _sent;

    public bool Send(ReadOnlySpan<byte> message)
    {
        _sent.Add(new(clock.Now, message.ToArray()));
        return true;
    }

    public string? Close() => null;
}
