using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Tests.Midi.Protocol;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Playing;

public sealed class PlayerLoopTests : IDisposable
{
    private static readonly Frame Hello = new Frame.Hello(ProtocolConstants.Version);
    private static readonly Frame Open = new Frame.OpenPort(PortChoice.First);
    private static readonly string[] Silence = ["803C40", "B04000", "B07B00", "B07800"];
    private readonly PlayerInThread _player = new();

    public void Dispose() => _player.Dispose();

    [Fact]
    public void It_greets_opens_and_plays_when_the_time_comes()
    {
        Write(Hello, Open, new Frame.SetTimeline(0, AtSixty), new Frame.Notes(0, [Note(60, 0, 1), Note(62, 1, 1)]));
        Assert.Equal(["C000", "903C40"], _player.Port.WaitFor(2));
        _player.Waiter.MoveTo(1);
        Assert.Equal(["803C40", "903E40"], _player.Port.WaitFor(4)[2..]);

        Assert.Equal(new Frame.Ready(ProtocolConstants.Version), Read());
        Assert.Equal(new Frame.PortOpened("Playing."), Read());
    }

    [Fact]
    public void A_silence_interrupts_the_wait_and_is_reported_with_its_time()
    {
        SoundOneNote();
        Write(new Frame.Silence(1));

        Assert.Equal(Silence, _player.Port.WaitFor(6)[2..]);
        Assert.Equal(new Frame.Silenced(1, new(0)), Read());
    }

    [Fact]
    public void At_the_end_of_input_it_silences_closes_and_ends()
    {
        SoundOneNote();
        _player.ToPlayer.Dispose();
        AssertSilentEnd();
    }

    [Fact]
    public void At_Quit_it_silences_closes_and_ends()
    {
        SoundOneNote();
        Write(new Frame.Quit());
        AssertSilentEnd();
    }

    [Fact]
    public void When_stopped_by_a_signal_it_silences_closes_and_ends()
    {
        SoundOneNote();
        _player.Loop.Stop();
        AssertSilentEnd();
    }

    [Fact]
    public void At_a_broken_frame_it_silences_closes_and_ends()
    {
        SoundOneNote();
        _player.ToPlayer.Write(Hex.Bytes("00 00 06 00 00 00 00"));
        AssertSilentEnd();
    }

    [Fact]
    public void Reports_that_nobody_takes_do_no_harm()
    {
        SoundOneNote();
        _player.FromPlayer.Dispose();
        Write(new Frame.Silence(1), new Frame.Notes(1, [Note(62, 0, 1)]));

        Assert.Equal("903E40", _player.Port.WaitFor(7)[6]);
    }

    [Fact]
    public void Another_version_is_refused_with_a_sentence()
    {
        Write(new Frame.Hello(99));

        Assert.Equal(new Frame.Refused("The console speaks version 99 of the player protocol, the player version 1. Install both from one package."), Read());
        _player.WaitForEnd();
    }

    [Fact]
    public void A_first_frame_that_is_no_greeting_is_refused()
    {
        Write(new Frame.Silence(1));

        Assert.Equal(new Frame.Refused("The first frame must be Hello, not Silence."), Read());
        _player.WaitForEnd();
    }

    [Fact]
    public void A_port_that_keeps_a_note_for_more_than_two_seconds_is_stuck_and_a_wait_for_the_next_note_is_not()
    {
        SoundOneNote();
        Write(new Frame.Notes(0, [Note(62, 100, 1)]));
        _player.Waiter.MoveTo(50);
        _player.Port.WaitFor(3); // the end of the first note
        Assert.False(_player.Loop.IsStuck);

        _player.Port.Block(true);
        _player.Waiter.MoveTo(100);
        _player.Port.WaitUntilHeldBack();
        Assert.False(_player.Loop.IsStuck);
        _player.Waiter.MoveTo(102.1);
        Assert.True(_player.Loop.IsStuck);
        _player.Port.Block(false);
    }

    private void Write(params Frame[] frames) => _player.ToPlayer.Write(FrameTests.Bytes(frames));

    private Frame? Read() => new FrameReader(_player.FromPlayer).Read();

    private void SoundOneNote()
    {
        Write(Hello, Open, new Frame.SetTimeline(0, AtSixty), new Frame.Notes(0, [Note(60, 0, 1)]));
        _player.Port.WaitFor(2);
        Assert.IsType<Frame.Ready>(Read());
        Assert.IsType<Frame.PortOpened>(Read());
    }

    private void AssertSilentEnd()
    {
        _player.WaitForEnd();
        Assert.Equal(["C000", "903C40", .. Silence], _player.Port.WaitFor(6));
        Assert.True(_player.Port.IsClosed);
        Assert.Equal((1, 0), Assert.IsType<Frame.Onsets>(Read()) is { } onsets ? (onsets.Figures.Played, onsets.Figures.Dropped) : default);
        Assert.Null(Read());
    }
}
