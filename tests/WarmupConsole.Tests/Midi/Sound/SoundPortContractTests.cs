using System.Collections.Concurrent;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Tests.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Sound;

/// <summary>The loudspeaker as a port, with a source and an output of the test's behind it.</summary>
public sealed class SoundPortContractTests : PortContract
{
    private readonly Source _source = new();
    private readonly Output _output = new();

    [Fact]
    public void A_loudspeaker_that_is_lost_is_a_lost_port()
    {
        Assert.True(Port.Send([0x90, 60, 64]));
        _output.Refuses = true;
        Assert.True(_output.Closed.WaitOne(TimeSpan.FromSeconds(10)));
        Assert.False(Port.Send([0x80, 60, 64]));
        Assert.True(_source.IsEnded);
    }

    [Fact]
    public void Closed_it_has_faded_and_let_the_loudspeaker_go()
    {
        Assert.True(Port.Send([0x90, 60, 64]));
        Port.Close();
        Assert.True(_output.Closed.WaitOne(0) && _source.IsEnded);
        Assert.Equal(0, _output.Last);
    }

    [Fact]
    public void What_the_source_does_not_know_does_no_harm() => Assert.True(Port.Send([0xE0, 0, 64]));

    protected override IMidiPort Open() => new SoundPort("sound", _source, _output);

    // Taken in order by the thread of the loudspeaker, at the latest before it ends.
    protected override void Arrived(string hex)
    {
        Port.Close();
        Assert.Equal(hex, string.Concat(_source.Taken.Select(Hex)));
    }

    private static string Hex(MidiMessage message)
    {
        byte[] bytes = new byte[MidiMessage.LongestLength];
        return Convert.ToHexString(bytes[..message.Encode(bytes)]);
    }

    private sealed class Source : IToneSource
    {
        private bool _isSilent;

        internal ConcurrentQueue<MidiMessage> Taken { get; } = [];

        internal bool IsEnded { get; private set; }

        public void Handle(MidiMessage message) => Taken.Enqueue(message);

        public void Render(Span<float> samples) => samples.Fill(_isSilent ? 0 : 0.1f);

        public void Silence() => _isSilent = true;

        public void Dispose() => IsEnded = true;
    }

    private sealed class Output : IAudioOutput
    {
        private int _refuses;

        internal ManualResetEvent Closed { get; } = new(false);

        internal short Last { get; private set; } = 1;

        internal bool Refuses
        {
            get => Volatile.Read(ref _refuses) != 0;
            set => Volatile.Write(ref _refuses, value ? 1 : 0);
        }

        public bool Write(ReadOnlySpan<short> samples)
        {
            Last = samples[^1];
            return !Refuses;
        }

        public void Close() => Closed.Set();
    }
}
