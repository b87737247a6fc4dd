using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Pitches;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Playing;

public class PianoPortTests
{
    private static readonly string[] Greeting = ["C000", "B04000", "B07B00", "B07800"];
    private readonly VirtualClock _clock = new();
    private readonly List<RecordingPort> _opened = [];
    private readonly RecordingPort _recording;
    private readonly PlayerEngine _engine;
    private bool _isThere = true;

    public PianoPortTests()
    {
        _recording = new(_clock);
        _engine = new(choice =>
        {
            PortOpening opening = OpenOnce(choice);
            return opening with { Port = new TeePort(new ReturningPort(opening, watch => _isThere ? OpenOnce(watch.Wish) : null), _recording) };
        });
    }

    [Fact]
    public void A_device_that_is_gone_is_let_go_and_told_of_and_what_is_recorded_goes_on()
    {
        SoundOneNote();
        Frame? report = _engine.Take(new(_engine.Watched!, IsThere: false));
        _engine.Handle(new Frame.Silence(1), Second(0));

        Assert.Equal(
            new Frame.PortLost("The port recording was lost: check cable and power. The music waits; the port is opened again as soon as it is there."),
            report);
        Assert.Equal(["C000", "903C40"], Sent(_opened[0]));
        Assert.Equal("803C40", Sent(_recording)[2]);
        Assert.Equal(new PortWatch(PortChoice.Named("Piano"), null), _engine.Watched);
    }

    [Fact]
    public void A_device_that_is_back_gets_program_and_controllers_and_is_told_of()
    {
        SoundOneNote();
        _engine.Take(new(_engine.Watched!, IsThere: false));
        Frame? report = _engine.Take(new(_engine.Watched!, IsThere: true));

        Assert.Equal(new Frame.PortOpened("The port recording is back. Space goes on."), report);
        Assert.Equal(Greeting, Sent(_opened[1]));
        Assert.Equal(new PortWatch(PortChoice.Named("Piano"), "Piano 21:0"), _engine.Watched);
    }

    [Fact]
    public void What_cannot_be_opened_yet_is_tried_again_without_a_word()
    {
        SoundOneNote();
        _engine.Take(new(_engine.Watched!, IsThere: false));
        _isThere = false;
        Assert.Null(_engine.Take(new(_engine.Watched!, IsThere: true)));

        _isThere = true;
        Assert.IsType<Frame.PortOpened>(_engine.Take(new(_engine.Watched!, IsThere: true)));
    }

    [Fact]
    public void A_piano_switched_on_after_the_start_is_played_on()
    {
        _isThere = false;
        Assert.Equal(new Frame.PortOpened("Nothing."), _engine.Handle(new Frame.OpenPort(PortChoice.First), default));

        _isThere = true;
        Assert.Equal(new Frame.PortOpened("Playing."), _engine.Take(new(_engine.Watched!, IsThere: true)));
        Assert.Equal(Greeting, Sent(Assert.Single(_opened)));
    }

    [Fact]
    public void A_loudspeaker_that_is_lost_is_no_cable_and_is_opened_again()
    {
        bool plays = true;
        PortOpening Open(PortWatch watch) => new(new Loudspeaker(() => plays), true, "The loudspeaker plays.") { Watch = watch with { LoudspeakerIsLost = false } };
        PlayerEngine engine = new(choice =>
        {
            PortOpening opening = Open(new(choice, null));
            return opening with { Port = new ReturningPort(opening, watch => plays ? Open(watch) : null) };
        });
        engine.Handle(new Frame.OpenPort(PortChoice.First), default);
        engine.Handle(new Frame.SetTimeline(0, AtSixty), default);
        engine.Handle(new Frame.Notes(0, [Note(60, 0, 9)]), default);
        plays = false;
        Assert.Equal(
            new Frame.PortLost("This machine's loudspeaker was lost: look at its sound settings, and at what was unplugged. The music waits; it plays again as soon as it can."),
            engine.RunDue(Second(0)));
        PortWatch lost = engine.Watched!;
        Assert.True(lost.LoudspeakerIsLost);
        Assert.Null(engine.Take(new(lost, IsThere: true)));
        plays = true;
        Assert.Equal(new Frame.PortOpened("This machine's loudspeaker plays again. Space goes on."), engine.Take(new(lost, IsThere: true)));
    }

    [Fact]
    public void What_was_seen_of_another_port_means_nothing()
    {
        SoundOneNote();
        PortWatch before = _engine.Watched!;
        _engine.Handle(new Frame.OpenPort(PortChoice.First), default);

        Assert.Null(_engine.Take(new(before, IsThere: false)));
    }

    private static string[] Sent(RecordingPort port) => [.. port.Sent.Select(m => Convert.ToHexString(m.Bytes.Span))];

    private void SoundOneNote()
    {
        _engine.Handle(new Frame.OpenPort(PortChoice.First), default);
        _engine.Handle(new Frame.SetTimeline(0, AtSixty), default);
        _engine.Handle(new Frame.Notes(0, [Note(60, 0, 9)]), default);
        _engine.RunDue(Second(0));
    }

    // A new port each time, with new numbers, as the system gives them.
    private PortOpening OpenOnce(PortChoice choice)
    {
        if (!_isThere)
        {
            return new(new NullPort(), true, "Nothing.") { Watch = new(choice, null) };
        }

        _opened.Add(new(_clock));
        return new(_opened[^1], true, "Playing.") { Watch = new(choice, $"Piano 2{_opened.Count - 1}:0") };
    }

    /// <summary>A port with the sentences of the real one.</summary>
    private sealed class Loudspeaker(Func<bool> plays) : IMidiPort
    {
        private readonly SoundPort _real = new("tone", new StringTone(Tuning.Iso16, SoundPort.SampleRate), new Mute());

        public string Name => _real.Name;

        public string LostSentence => _real.LostSentence;

        public string BackSentence => _real.BackSentence;

        public bool Send(ReadOnlySpan<byte> message) => plays();

        public string? Close() => _real.Close();
    }

    private sealed class Mute : IAudioOutput
    {
        public bool Write(ReadOnlySpan<short> samples) => false;

        public void Close()
        {
        }
    }
}
