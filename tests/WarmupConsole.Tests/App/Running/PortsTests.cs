using WarmupConsole.App;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Storage;

namespace WarmupConsole.Tests.App.Running;

public sealed class PortsTests : IDisposable
{
    private static readonly PortListing Two = new(["Keyboard", "Stage piano"], null);
    private readonly TemporaryFolder _folder = new();
    private readonly Composition _composition;

    public PortsTests() => _composition = new()
    {
        Clock = new VirtualClock(),
        Wall = TimeProvider.System,
        Settings = new SettingsFolder(_folder.Root),
        CurrentFolder = _folder.Root,
        StartPlayer = _ => throw new InvalidOperationException("Nothing is to sound."),
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(null, "Keyboard")]
    [InlineData("stage", "Stage piano")]
    [InlineData("built-in", "Keyboard")]
    [InlineData("built-in tone", "Keyboard")]
    [InlineData("none", null)]
    public void The_input_of_the_port_is_heard_and_beside_the_loudspeaker_the_first_instrument(string? port, string? heard) =>
        Assert.Equal(heard, Ports.Inputs(_composition, port, Two).Used);

    [Fact]
    public void What_the_settings_name_is_heard_whatever_is_played_on_and_they_are_the_reason()
    {
        Assert.Null(_composition.Settings.WriteSettings(new(null) { Input = "stage" }));
        Assert.Equal("Stage piano", Ports.Inputs(_composition, "none", Two).Used);
        Assert.EndsWith($"listen to Stage piano: input: in {_composition.Settings.SettingsPath}.", Ports.Inputs(_composition, null, Two).Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void The_name_of_the_port_is_told_as_the_reason() =>
        Assert.EndsWith("listen to Keyboard: it has the name of the port.", Ports.Inputs(_composition, "keyb", Two).Verdict, StringComparison.Ordinal);
}
