namespace WarmupConsole.Midi.Ports;

/// <summary>A port of the system, through RtMidi.</summary>
internal sealed class RtMidiPort(RtMidiOut output, string name) : IMidiPort
{
    /// <summary>JACK needs about ten milliseconds to send what waits; with its server gone it may never come back.</summary>
    private static readonly TimeSpan ToClose = TimeSpan.FromMilliseconds(300);

    private bool _isClosed;

    public string Name => name;

    public bool Send(ReadOnlySpan<byte> message) => !_isClosed && output.Send(message);

    public string? Close()
    {
        if (!_isClosed)
        {
            _isClosed = true;
            Thread closing = new(output.Close) { IsBackground = true, Name = "port closing" };
            closing.Start();
            closing.Join(ToClose);
        }

        return null;
    }
}
