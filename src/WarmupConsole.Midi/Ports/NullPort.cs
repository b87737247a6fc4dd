namespace WarmupConsole.Midi.Ports;

/// <summary>Swallows everything until it is closed, so that a run without an instrument is like any other.</summary>
public sealed class NullPort : IMidiPort
{
    private bool _isClosed;

    public string Name => PortTexts.NoPort;

    public bool Send(ReadOnlySpan<byte> message) => !_isClosed;

    public string? Close()
    {
        _isClosed = true;
        return null;
    }
}
