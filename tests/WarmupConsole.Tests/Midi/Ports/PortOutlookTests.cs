using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;

namespace WarmupConsole.Tests.Midi.Ports;

public class PortOutlookTests
{
    private static readonly SoundOutlook BuiltIn = new(true, "The loudspeaker would play.");
    private static readonly SoundOutlook Mute = new(false, "No loudspeaker.");
    private const string Why = "chosen with --port";
    private static readonly PortListing Two = new(["Midi Through:Port-0", "Piano:MIDI 1"], null);

    [Fact]
    public void The_port_that_would_be_used_is_marked_and_the_reason_told() => Assert.Equal(
        [
            "  Midi Through:Port-0 (leads back into this machine, to no instrument)",
            "> Piano:MIDI 1",
            "",
            "A warm-up would play on Piano:MIDI 1: the first instrument found; choose another with --use NAME.",
        ],
        PortOutlook.Lines(Two, PortChoice.First, Why, BuiltIn));

    [Theory]
    [InlineData("through", "A warm-up would play on Midi Through:Port-0: chosen with --port.")]
    [InlineData("harp", "Nothing sounds: no port's name contains 'harp'. There are: Midi Through:Port-0; Piano:MIDI 1.")]
    public void A_wish_is_met_or_not_and_that_is_told(string wish, string verdict) =>
        Assert.Equal(verdict, PortOutlook.Lines(Two, PortChoice.Named(wish), Why, BuiltIn)[^1]);

    [Fact]
    public void A_device_file_is_used_as_named()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Raw device files exist on Linux only.");
        Assert.Equal("A warm-up would play on /dev/snd/midiC1D0: chosen with --port.", PortOutlook.Lines(Two, PortChoice.Named("/dev/snd/midiC1D0"), Why, BuiltIn)[^1]);
    }

    [Fact]
    public void Two_ports_of_one_name_are_told_of() => Assert.Equal(
        "Several ports are named Piano: the first is used, and they cannot be told apart. If it is the wrong one, disconnect the other.",
        PortOutlook.Lines(new(["Piano", "Piano"], null), PortChoice.First, Why, BuiltIn)[^1]);

    [Fact]
    public void Without_any_port_the_loudspeaker_plays_or_there_is_the_trouble_and_what_to_do()
    {
        Assert.Equal([BuiltIn.Sentence], PortOutlook.Lines(new([], "No library."), PortChoice.First, Why, BuiltIn));
        Assert.Equal([$"No library. {Mute.Sentence}"], PortOutlook.Lines(new([], "No library."), PortChoice.First, Why, Mute));
    }

    [Theory]
    [InlineData("built-in")]
    [InlineData("built-in tone")]
    public void Sound_of_the_machine_itself_may_be_wished_for(string wish) => Assert.Equal(
        $"A warm-up would play on {wish}: chosen with --port. {BuiltIn.Sentence}",
        PortOutlook.Lines(Two, PortChoice.Named(wish), Why, BuiltIn)[^1]);

    [Fact]
    public void Silence_by_choice_is_said_to_be_one() =>
        Assert.Equal("Nothing sounds: playing without a port, as chosen.", PortOutlook.Lines(Two, PortChoice.None, Why, BuiltIn)[^1]);
}
