using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Ports;

public sealed class RawPortTests : IDisposable
{
    private static readonly byte[] NoteOn = [0x90, 60, 64];
    private readonly NamedPipe _pipe = new();

    public void Dispose() => _pipe.Dispose();

    [Fact]
    public void A_path_is_a_port_with_no_library_at_all()
    {
        PortOpening opening = MidiPorts.Open(_pipe.Choice);

        Assert.True(opening.AsWanted);
        Assert.Equal($"Playing on {_pipe.Path}.", opening.Sentence);
        Assert.Equal(new PortWatch(_pipe.Choice, _pipe.Path), opening.Watch);
    }

    [Fact]
    public void A_device_switched_off_is_a_lost_port_and_no_exception()
    {
        IMidiPort port = MidiPorts.Open(_pipe.Choice).Port;
        Assert.True(port.Send(NoteOn));
        _pipe.Disconnect();
        Assert.False(port.Send(NoteOn));
        port.Close();
    }

    [Fact]
    public void A_device_that_takes_nothing_more_is_lost_and_nothing_waits_for_it()
    {
        IMidiPort port = MidiPorts.Open(_pipe.Choice).Port;
        int taken = 0;
        while (taken < 100_000 && port.Send(NoteOn))
        {
            taken++;
        }

        Assert.InRange(taken, 2000, 99_999); // a pipe holds 64 KiB
        port.Close();
    }

    [Fact]
    public void Nothing_behind_the_device_file_is_a_failure_with_a_sentence()
    {
        _pipe.Disconnect();
        PortOpening opening = MidiPorts.Open(_pipe.Choice);

        Assert.False(opening.AsWanted);
        Assert.Equal($"Nothing sounds: the device file {_pipe.Path} is not there, or nothing is behind it. Connect and switch on the piano.", opening.Sentence);
        Assert.Equal(new PortWatch(_pipe.Choice, null), opening.Watch);
    }

    [Fact]
    public void A_device_that_comes_back_is_played_on_again()
    {
        IMidiPort port = MidiPorts.Open(_pipe.Choice).Port;
        _pipe.Disconnect();
        port.Lose();
        Assert.Null(port.Return());

        _pipe.Connect();
        Assert.Equal($"Playing on {_pipe.Path}.", port.Return()?.Sentence);
        Assert.True(port.Send(NoteOn));
        Assert.Equal(NoteOn, _pipe.Read());
        port.Close();
    }

    [Fact]
    public void Device_files_are_listed_with_the_names_of_their_cards()
    {
        string folder = Path.GetDirectoryName(_pipe.Path)!;
        Assert.Equal([$"Card 7 ({_pipe.Path})"], new RawDevices(folder, folder).Names());

        Directory.CreateDirectory(Path.Combine(folder, "card7"));
        File.WriteAllText(Path.Combine(folder, "card7", "id"), "Piano\n");
        Assert.Equal([$"Piano ({_pipe.Path})"], new RawDevices(folder, folder).Names());
        Assert.Empty(new RawDevices(Path.Combine(folder, "none"), folder).Names());
    }

    [Theory]
    [InlineData("piano", true)]
    [InlineData("harp", false)]
    public void A_device_file_is_opened_by_part_of_its_cards_name(string wanted, bool found)
    {
        string folder = Path.GetDirectoryName(_pipe.Path)!;
        Directory.CreateDirectory(Path.Combine(folder, "card7"));
        File.WriteAllText(Path.Combine(folder, "card7", "id"), "Piano\n");

        PortOpening opening = new RawDevices(folder, folder).Open(PortChoice.Named(wanted));

        Assert.Equal(found, opening.AsWanted);
        Assert.Equal(found, opening.Port is RawPort);
        opening.Port.Close();
    }
}
