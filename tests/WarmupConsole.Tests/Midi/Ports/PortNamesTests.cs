using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Ports;

public class PortNamesTests
{
    private static readonly string[] Names = ["Midi Through:Midi Through Port-0 14:0", "Digital Piano:Digital Piano MIDI 1 20:0", "Organ:out 24:1"];

    [Theory]
    [InlineData("Digital Piano:Digital Piano MIDI 1 20:0", "Digital Piano:Digital Piano MIDI 1")]
    [InlineData("Organ 128:10", "Organ")]
    [InlineData("fluidsynth:midi_00", "fluidsynth:midi_00")]
    [InlineData("Piano 88", "Piano 88")]
    [InlineData("20:0", "20:0")]
    [InlineData("Piano 20:0 b", "Piano 20:0 b")]
    [InlineData("", "")]
    public void Only_the_numbers_at_the_end_of_a_name_are_taken_off(string name, string expected) =>
        Assert.Equal(expected, PortNames.WithoutNumbers(name));

    [Theory]
    [InlineData("digital piano", 1)]
    [InlineData("ORGAN", 2)]
    [InlineData("Digital Piano:Digital Piano MIDI 1 36:0", 1)] // kept from before the cable was put in again
    [InlineData("through", 0)]
    [InlineData("14:0", -1)]
    [InlineData("harp", -1)]
    public void A_port_is_found_by_part_of_its_name(string wanted, int index) =>
        Assert.Equal(index, PortNames.Find(Names, PortChoice.Named(wanted)));

    [Fact]
    public void The_first_port_is_never_the_loopback() => Assert.Equal(1, PortNames.Find(Names, PortChoice.First));

    [Fact]
    public void With_only_the_loopback_there_is_no_first_port() => Assert.Equal(-1, PortNames.Find(Names[..1], PortChoice.First));

    [Fact]
    public void No_port_is_found_when_none_is_wanted() => Assert.Equal(-1, PortNames.Find(Names, PortChoice.None));

    [Fact]
    public void Opening_no_port_gives_one_that_takes_everything()
    {
        PortOpening opening = MidiPorts.Open(PortChoice.None);

        Assert.True(opening.AsWanted);
        Assert.Equal("Nothing sounds: playing without a port, as chosen.", opening.Sentence);
        Assert.True(opening.Port.Send([0x90, 60, 64]));
        Assert.Null(opening.Port.Close());
    }

    [Fact]
    public void A_name_that_no_port_has_is_a_failure_with_a_sentence()
    {
        PortOpening opening = MidiPorts.Open(PortChoice.Named("no piano has this name"));

        Assert.False(opening.AsWanted);
        Assert.StartsWith("Nothing sounds: ", opening.Sentence, StringComparison.Ordinal);
        Assert.True(opening.Port.Send([0x90, 60, 64]));
    }

    [Fact]
    public void Listing_gives_names_or_says_why_there_are_none()
    {
        PortListing listing = MidiPorts.List();
        Assert.Equal(listing.Names.Count == 0, listing.Trouble is not null);
    }
}
