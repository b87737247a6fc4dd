using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Listening;

public class InputOutlookTests
{
    private const string Why = "it has the name of the port";
    private static readonly PortListing Two = new(["Midi Through:Port-0", "Piano:MIDI 1"], null);

    [Fact]
    public void The_input_that_would_be_heard_is_marked_and_the_reason_told() => Assert.Equal(
        [
            "Inputs, for pedals, played keys and follow mode:",
            "  Midi Through:Port-0 (leads back into this machine, to no instrument)",
            "> Piano:MIDI 1",
            "",
            "Pedals, played keys and follow mode would listen to Piano:MIDI 1: the first instrument found; for another one write its name as input: in settings.yaml.",
        ],
        Of(Two, PortChoice.First).Lines);

    [Theory]
    [InlineData("through", "Midi Through:Port-0", "Pedals, played keys and follow mode would listen to Midi Through:Port-0: it has the name of the port.")]
    [InlineData("harp", null, "Nothing is heard: no input's name contains 'harp'. There are: Midi Through:Port-0; Piano:MIDI 1.")]
    public void A_wish_is_met_or_not_and_that_is_told(string wish, string? used, string verdict) =>
        Assert.Equal((used, verdict), (Of(Two, PortChoice.Named(wish)).Used, Of(Two, PortChoice.Named(wish)).Verdict));

    [Fact]
    public void Two_inputs_of_one_name_are_not_listened_to_and_that_is_told()
    {
        InputOutlook alike = Of(new(["Piano", "Piano"], null), PortChoice.First);
        Assert.Null(alike.Used);
        Assert.Equal(["  Piano", "  Piano"], alike.Lines.Skip(1).Take(2));
        Assert.StartsWith("Nothing is heard: two inputs are named Piano", alike.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_file_is_listened_to_as_named()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Raw device files exist on Linux only.");
        Assert.Equal("Pedals, played keys and follow mode would listen to /dev/snd/midiC1D0: it has the name of the port.", Of(Two, PortChoice.Named("/dev/snd/midiC1D0")).Verdict);
    }

    [Fact]
    public void Without_any_input_there_is_one_line_with_what_to_do()
    {
        Assert.Equal(["Nothing is heard: no MIDI input found. Connect and switch on the piano."], Of(new([], null), PortChoice.First).Lines);
        Assert.Equal(["No library."], Of(new([], "No library."), PortChoice.First).Lines);
        Assert.Equal(["Nothing is heard: no port, as chosen."], Of(new([], null), PortChoice.None).Lines);
    }

    private static InputOutlook Of(PortListing listing, PortChoice choice) => new(listing, choice, Why);
}
