namespace WarmupConsole.Midi.Ports;

/// <summary>A port whose device may go and come back while everything around it stays: it is opened again by its name.</summary>
/// <param name="first">What came of opening it at first.</param>
/// <param name="open">Opens it again; null as long as it is not there.</param>
public sealed class ReturningPort(PortOpening first, Func<PortWatch, PortOpening?> open) : IMidiPort
{
    private IMidiPort _device = first.Port;
    private PortWatch? _watch = first.Watch;

    public string Name => _device.Name;

    public string LostSentence => _device.LostSentence;

    public string BackSentence => _device.BackSentence;

    public bool Send(ReadOnlySpan<byte> message) => _device.Send(message);

    public string? Close() => _device.Close();

    public void Lose()
    {
        _device.Close();
        _watch = _watch?.AfterLoss();
    }

    public PortOpening? Return()
    {
        if (_watch is not { Device: null } watch || open(watch) is not { } again)
        {
            return null;
        }

        _device.Close(); // what played in its place
        (_device, _watch) = (again.Port, again.Watch);
        return again with { Port = this };
    }
}
