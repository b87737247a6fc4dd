using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Tests.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Listening;

public sealed class MidiInputsTests : IDisposable
{
    private readonly NamedPipe _pipe = new();

    public void Dispose() => _pipe.Dispose();

    [Fact]
    public void A_path_is_listened_to_with_no_library_at_all()
    {
        IMidiInput input = MidiInputs.Open(_pipe.Choice).Input!;
        IMidiPort port = MidiPorts.Open(_pipe.Choice).Port;
        byte[] bytes = new byte[16];
        Assert.Equal(0, input.Take(bytes));
        port.Send([0x90, 60, 64]);
        Assert.Equal(3, input.Take(bytes));
        Assert.Equal([0x90, 60, 64], bytes[..3]);
        port.Close();
        input.Close();
        input.Close();
        Assert.Equal(0, input.Take(bytes));
    }

    [Fact]
    public void A_device_file_is_found_by_part_of_its_cards_name()
    {
        string folder = Path.GetDirectoryName(_pipe.Path)!;
        Directory.CreateDirectory(Path.Combine(folder, "card7"));
        File.WriteAllText(Path.Combine(folder, "card7", "id"), "Piano\n");
        RawDevices devices = new(folder, folder);

        InputOpening opening = MidiInputs.OpenDevice(PortChoice.Named("piano"), devices);
        Assert.Equal($"Listening to Piano ({_pipe.Path}).", opening.Sentence);
        opening.Input!.Close();
        Assert.Equal(
            new(null, $"Nothing is heard: no input's name contains 'harp'. There are: Piano ({_pipe.Path})."),
            MidiInputs.OpenDevice(PortChoice.Named("harp"), devices));
    }

    [Fact]
    public void What_cannot_be_listened_to_is_told_and_the_line_may_be_typed()
    {
        string missing = _pipe.Path + "x";
        Assert.Equal(new(null, "Nothing is heard: no port, as chosen."), MidiInputs.Open(PortChoice.None));
        Assert.Equal(
            new(null, $"Nothing is heard: {missing} could not be opened. Another program may hold it: close that, then try again."),
            MidiInputs.Open(PortChoice.Named(missing)));
        Assert.Equal(
            new(null, "Nothing is heard: no MIDI input found. Connect and switch on the piano."),
            MidiInputs.OpenDevice(PortChoice.First, new RawDevices(Path.Combine(_pipe.Path, "none"))));
    }
}
