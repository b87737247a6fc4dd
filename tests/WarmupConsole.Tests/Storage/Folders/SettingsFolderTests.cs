using WarmupConsole.Sessions.Hands;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.Storage.Folders;

public sealed class SettingsFolderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("XDG_CONFIG_HOME=/cfg;HOME=/home/x", "/cfg/warmup-console")]
    [InlineData("XDG_CONFIG_HOME=relative;HOME=/home/x", "/home/x/.config/warmup-console")]
    [InlineData("HOME=/home/x", "/home/x/.config/warmup-console")]
    public void It_is_found_by_the_rules_of_the_system(string variables, string expected)
    {
        Dictionary<string, string> environment = variables.Split(';').Select(pair => pair.Split('=')).ToDictionary(pair => pair[0], pair => pair[1]);
        SettingsFolder found = SettingsFolder.Locate(name => environment.GetValueOrDefault(name), isWindows: false);
        Assert.Equal(expected, found.Root.Replace('\\', '/'));
    }

    [Fact]
    public void On_windows_it_stands_in_the_roaming_folder_and_without_any_home_in_the_temporary_one()
    {
        Assert.Equal(Path.Combine("C:/Roaming", "warmup-console"), SettingsFolder.Locate(name => name == "APPDATA" ? "C:/Roaming" : null, isWindows: true).Root);
        Assert.Equal(Path.Combine(Path.GetTempPath(), "warmup-console"), SettingsFolder.Locate(_ => null, isWindows: false).Root);
    }

    [Theory]
    [InlineData("FLUID Synth: port 1")]
    [InlineData("8")]
    [InlineData("ends with \"quotes\" \\ ")]
    public void A_port_is_kept_and_read_back(string port)
    {
        SettingsFolder settings = new(folder.PathOf("new", "settings"));
        Assert.Null(settings.ReadSettings().Value!.Port);
        Assert.Null(settings.WriteSettings(new("first")));
        Assert.Null(settings.WriteSettings(new(port)));
        Assert.Equal(port, settings.ReadSettings().Value!.Port);
        Assert.Equal(["settings.yaml"], Directory.GetFiles(settings.Root).Select(Path.GetFileName));
    }

    [Fact]
    public void Where_A4_lies_is_kept_beside_the_port_and_within_the_pitches_in_use()
    {
        SettingsFolder settings = new(folder.Root);
        Assert.Null(settings.WriteSettings(new("Piano") { A4Hertz = 442.5 }));
        Assert.Equal(new MachineSettings("Piano") { A4Hertz = 442.5 }, settings.ReadSettings().Value);
        folder.Write("format: 1\na4: 467\n", "settings.yaml");
        Assert.Contains("'a4' is 467, which is out of range (415 to 466 Hz)", Assert.Single(settings.ReadSettings().Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_in_the_settings_is_told_at_its_place()
    {
        folder.Write("format: 1\nprot: x\n", "settings.yaml");
        Assert.Equal((2, 1), Assert.Single(new SettingsFolder(folder.Root).ReadSettings().Problems) is var p ? (p.Line, p.Column) : default);
    }

    [Fact]
    public void Pedals_are_kept_beside_the_port_and_read_back()
    {
        SettingsFolder settings = new(folder.Root);
        MachineSettings kept = new("Stage piano") { Input = "Foot switch", Pedals = Pedals.None.With(PedalUse.GoOn, new(false, 64, true)).With(PedalUse.Pin, new(true, 21, false)) };
        Assert.Null(settings.WriteSettings(kept));
        Assert.Equal(kept, settings.ReadSettings().Value);
        Assert.Equal("format: 1\nport: Stage piano\ninput: Foot switch\npedals:\n  go-on: sustain, reversed\n  pin: key 21\n", File.ReadAllText(settings.SettingsPath));
    }

    [Theory]
    [InlineData("pedals: {go-on: damper}", "go-on is none of: sustain")]
    [InlineData("pedals: {go-on: soft, pin: 'soft, reversed'}", "pin is the same control as go-on")]
    [InlineData("pedals: {go: soft}", "go")]
    [InlineData("pedals: soft", "pedals")]
    [InlineData("pedals: {silence: ''}", "silence")]
    public void A_pedal_that_is_none_is_told_at_its_place(string line, string told)
    {
        folder.Write($"format: 1\n{line}\n", "settings.yaml");
        Assert.Contains(told, Assert.Single(new SettingsFolder(folder.Root).ReadSettings().Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told_and_not_thrown()
    {
        SettingsFolder settings = new(Path.Combine(folder.Write("", "file"), "below"));
        Assert.StartsWith("it cannot be written: ", settings.WriteSettings(new("p")), StringComparison.Ordinal);
        Assert.StartsWith("it cannot be written: ", settings.AddDiagnostics(default, "x"), StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnostics_are_lines_without_control_characters()
    {
        SettingsFolder settings = new(folder.Root);
        settings.AddDiagnostics(new(2027, 2, 16, 19, 30, 5, TimeSpan.FromHours(1)), "port\u001b gone\nnow");
        settings.AddDiagnostics(default, "second");
        string[] lines = File.ReadAllLines(settings.DiagnosticsPath);
        Assert.Equal((2, "2027-02-16T19:30:05.0000000+01:00 port\uFFFD gone\uFFFDnow"), (lines.Length, lines[0]));
    }
}
