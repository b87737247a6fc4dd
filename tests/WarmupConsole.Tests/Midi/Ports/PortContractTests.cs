using NAudio.Midi;
using WarmupConsole.Midi.Files;
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

/// <summary>RtMidi on a port that may be played on: two thousand notes go there. The script of the real receiver names one.</summary>
public sealed class RtMidiPortContractTests : PortContract
{
    private const string Variable = "WARMUP_TEST_PORT";

    protected override IMidiPort Open()
    {
        string? name = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(name is null, $"{Variable} names no port to play on.");
        PortOpening opening = MidiPorts.Open(PortChoice.Named(name!));
        Assert.True(opening.AsWanted, opening.Sentence);
        return opening.Port;
    }
}

public sealed class MidiFileContractTests : PortContract
{
    private readonly string _folder = Directory.CreateTempSubdirectory("warmup-contract-").FullName;

    private string FilePath => Path.Combine(_folder, "kept.mid");

    protected override IMidiPort Open() => FileRecorder.Smf(FilePath, new VirtualClock());

    protected override void Arrived(string hex)
    {
        Assert.Null(Port.Close());
        IEnumerable<MidiEvent> sent = new MidiFile(FilePath, strictChecking: false).Events[0].Where(sent => sent.CommandCode != MidiCommandCode.MetaEvent);
        Assert.Equal(hex, string.Concat(sent.Select(Bytes)));
    }

    protected override void CleanUp() => Directory.Delete(_folder, recursive: true);

    private static string Bytes(MidiEvent sent)
    {
        int packed = sent.GetAsShortMessage();
        byte[] bytes = [(byte)packed, (byte)(packed >> 8), (byte)(packed >> 16)];
        return Convert.ToHexString(bytes[..(sent.CommandCode == MidiCommandCode.PatchChange ? 2 : 3)]);
    }
}

public sealed class TraceContractTests : PortContract
{
    private readonly string _folder = Directory.CreateTempSubdirectory("warmup-contract-").FullName;

    private string FilePath => Path.Combine(_folder, "trace");

    protected override IMidiPort Open() => FileRecorder.Trace(FilePath, new VirtualClock());

    protected override void Arrived(string hex)
    {
        Assert.Null(Port.Close());
        Assert.Equal(hex, string.Concat(File.ReadLines(FilePath).Select(line => line.Split(' ')[1])));
    }

    protected override void CleanUp() => Directory.Delete(_folder, recursive: true);
}

/// <summary>Windows' own interface with a device of the test's behind it: what goes to the system is seen on any system.</summary>
public sealed class WinMmPortContractTests : PortContract
{
    private readonly Device _device = new();

    [Fact]
    public void A_device_that_refuses_is_a_lost_port_and_no_exception()
    {
        Assert.True(Port.Send([0x90, 60, 64]));
        _device.Refuses = true;
        Assert.False(Port.Send([0x80, 60, 64]));
        Assert.Null(Port.Close());
        Assert.True(_device.IsClosed);
    }

    protected override IMidiPort Open() => new WinMmPort(_device, "piano");

    protected override void Arrived(string hex) => Assert.Equal(hex, string.Concat(_device.Sent.Select(Bytes)));

    private static string Bytes(int packed) =>
        $"{packed & 0xFF:X2}{(packed >> 8) & 0xFF:X2}{((packed & 0xF0) == 0xC0 ? "" : $"{packed >> 16:X2}")}";

    private sealed class Device : IMidiOutput
    {
        internal List<int> Sent { get; } = [];

        internal bool Refuses { get; set; }

        internal bool IsClosed { get; private set; }

        public void Send(int message)
        {
            ObjectDisposedException.ThrowIf(Refuses, this); // the library's own exception can be made on Windows only
            Sent.Add(message);
        }

        public void SendBuffer(byte[] byteBuffer) => throw new NotSupportedException();

        public void Dispose() => IsClosed = true;
    }
}
