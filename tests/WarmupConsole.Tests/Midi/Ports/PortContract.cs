using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Ports;

/// <summary>What the player relies on, whatever the port: each kind has a class below that names how it is opened.</summary>
public abstract class PortContract : IDisposable
{
    private const int Burst = 2000;
    private static readonly byte[] NoteOn = [0x90, 60, 64];
    private IMidiPort? _port;

    protected IMidiPort Port => _port ??= Open();

    public void Dispose()
    {
        _port?.Close();
        CleanUp();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void It_has_a_name_for_the_director() => Assert.NotEmpty(Port.Name);

    [Fact]
    public void It_takes_whole_messages_in_their_order()
    {
        Assert.True(Port.Send([0xC0, 0]));
        Assert.True(Port.Send(NoteOn));
        Assert.True(Port.Send([0x80, 60, 64]));
        Arrived("C000903C40803C40");
    }

    [Fact]
    public void It_takes_a_burst_far_larger_than_any_chord()
    {
        int taken = Enumerable.Range(0, Burst).Count(_ => Port.Send(NoteOn));
        Assert.Equal(Burst, taken);
        Arrived(string.Concat(Enumerable.Repeat("903C40", Burst)));
    }

    [Fact]
    public void It_may_be_closed_again_to_no_effect()
    {
        Port.Send(NoteOn);
        Assert.Null(Port.Close());
        Assert.Null(Port.Close());
    }

    [Fact]
    public void Closed_it_refuses_and_does_no_harm()
    {
        Port.Close();
        Assert.False(Port.Send(NoteOn));
    }

    [Fact]
    public void Lost_it_can_still_be_closed()
    {
        Port.Send(NoteOn);
        Port.Lose();
        Assert.Null(Port.Close());
    }

    protected abstract IMidiPort Open();

    /// <summary>Checks what came out at the other end, where that can be seen.</summary>
    protected virtual void Arrived(string hex)
    {
    }

    protected virtual void CleanUp()
    {
    }
}
