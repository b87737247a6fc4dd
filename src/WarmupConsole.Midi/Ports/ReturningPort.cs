namespace WarmupConsole.Midi.Ports;

/// <summary>A port whose device may go and come back while everything around it stays: it is opened again by its name.</summary>
/// <param name="first">What came of opening it at first.</param>
/// <param name="open">Opens it again.</param>
public sealed class ReturningPort(PortOpening first, Func<PortChoice, PortOpening> open) : IMidiPort
{
    private IMidiPort _device = first.Port;
    private PortWatch? _watch = first.Watch;

    public string Name => _device.Name;

    public bool Send(ReadOnlySpan<byte> message) => _device.Send(message);

    public string? Close() => _device.Close();

    public void Lose()
    {
        _device.Close();
        _watch = _watch?.AfterLoss();
    }

    public PortOpening? Return()
    {
        if (_watch is not { Device: null } watch)
        {
            return null;
        }

        PortOpening again = open(watch.Wish);
        if (again.Watch?.Device is null)
        {
            return null;
        }

        _device.Close(); // what played in its place
        (_device, _watch) = (again.Port, again.Watch);
        return again with { Port = this };
    }
}
