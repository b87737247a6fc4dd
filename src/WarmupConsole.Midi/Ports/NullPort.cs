namespace WarmupConsole.Midi.Ports;

/// <summary>Swallows everything, so that a run without an instrument is like any other.</summary>
public sealed class NullPort : IMidiPort
{
    public string Name => PortTexts.NoPort;

    public bool Send(ReadOnlySpan<byte> message) => true;

    public string? Close() => null;
}
