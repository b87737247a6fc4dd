using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Ports;

public class PortTests
{
    [Fact]
    public void A_recording_keeps_each_message_with_its_moment()
    {
        VirtualClock clock = new();
        RecordingPort port = new(clock);
        byte[] reused = [0x90, 60, 64];

        port.Send(reused);
        clock.MoveTo(new(5));
        reused[1] = 62;
        port.Send(reused);

        Assert.Equal([(0, "90 3C 40"), (5, "90 3E 40")], port.Sent.Select(m => (m.At.Nanoseconds, Hex.Of(m.Bytes.Span))));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_tee_serves_the_second_port_whatever_the_first_says(bool firstWorks)
    {
        RecordingPort second = new(new VirtualClock());
        FlakyPort first = new() { Works = firstWorks };
        TeePort tee = new(first, second);

        Assert.Equal(firstWorks, tee.Send([0x80, 60, 64]));
        Assert.Single(second.Sent);
        Assert.Equal(first.Name, tee.Name);
    }

    [Fact]
    public void A_tee_closes_both_and_tells_of_every_trouble()
    {
        FlakyPort first = new() { Trouble = "One." };
        FlakyPort second = new() { Trouble = "Two." };

        Assert.Equal("One. Two.", new TeePort(first, second).Close());
        Assert.Equal("Two.", new TeePort(new NullPort(), second).Close());
        Assert.Equal((1, 2), (first.TimesClosed, second.TimesClosed));
    }

    [Fact]
    public void The_port_test_is_a_quiet_scale_then_its_chord()
    {
        var notes = PortTest.Notes();

        Assert.Equal([60, 62, 64, 65, 67, 69, 71, 72], notes.Take(8).Select(n => n.Midi));
        Assert.Equal([60, 64, 67, 72], notes.Skip(8).Select(n => n.Midi));
        Assert.All(notes.Skip(8), n => Assert.Equal(Beats.FromBeats(8), n.Start));
        Assert.All(notes, n => Assert.InRange(n.Velocity, 1, 40));
    }
}
