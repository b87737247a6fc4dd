using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Tests.Midi.Ports;

public sealed class NullPortContractTests : PortContract
{
    protected override IMidiPort Open() => new NullPort();
}

public sealed class RecordingPortContractTests : PortContract
{
    private readonly RecordingPort _port = new(new VirtualClock());

    protected override IMidiPort Open() => _port;

    protected override void Arrived(string hex) => Assert.Equal(hex, string.Concat(_port.Sent.Select(m => Convert.ToHexString(m.Bytes.Span))));
}

public sealed class TeePortContractTests : PortContract
{
    private readonly RecordingPort _first = new(new VirtualClock());
    private readonly RecordingPort _second = new(new VirtualClock());

    protected override IMidiPort Open() => new TeePort(_first, _second);

    protected override void Arrived(string hex) => Assert.All([_first, _second], port =>
        Assert.Equal(hex, string.Concat(port.Sent.Select(m => Convert.ToHexString(m.Bytes.Span)))));
}

public sealed class ReturningPortContractTests : PortContract
{
    private readonly RecordingPort _port = new(new VirtualClock());

    protected override IMidiPort Open() => new ReturningPort(new(_port, true, ""), _ => new(_port, true, ""));

    protected override void Arrived(string hex) => Assert.Equal(hex, string.Concat(_port.Sent.Select(m => Convert.ToHexString(m.Bytes.Span))));
}

public sealed class RawPortContractTests : PortContract
{
    private readonly NamedPipe _pipe = new();

    protected override IMidiPort Open() => MidiPorts.Open(_pipe.Choice).Port;

    protected override void Arrived(string hex) => Assert.Equal(hex, Convert.ToHexString(_pipe.Read()));

    protected override void CleanUp() => _pipe.Dispose();
}
