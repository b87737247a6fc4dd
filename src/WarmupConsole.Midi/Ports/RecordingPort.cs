using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Ports;

/// <summary>Keeps every message and its moment until it is closed.</summary>
public sealed class RecordingPort(IMonotonicClock clock) : IMidiPort
{
    private readonly List<TimedMessage> _sent = [];
    private bool _isClosed;

    public string Name => PortTexts.Recording;

    public IReadOnlyList<TimedMessage> Sent => _sent;

    public bool Send(ReadOnlySpan<byte> message)
    {
        if (!_isClosed)
        {
            _sent.Add(new(clock.Now, message.ToArray()));
        }

        return !_isClosed;
    }

    public string? Close()
    {
        _isClosed = true;
        return null;
    }
}
