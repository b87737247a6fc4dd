namespace WarmupConsole.Midi.Ports;

/// <summary>A port of the system, through RtMidi.</summary>
internal sealed class RtMidiPort(RtMidiOut output, string name) : IMidiPort
{
    public string Name => name;

    public bool Send(ReadOnlySpan<byte> message) => output.Send(message);

    public string? Close()
    {
        output.Close();
        return null;
    }
}
