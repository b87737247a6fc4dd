using System.Diagnostics;
using System.Text.Json;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Midi.Ports;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Player;

/// <summary>The real program as a real child, playing on a pipe that it takes for a device. Every wait is for an event, with a bound.</summary>
public sealed class PlayerProcessTests : IDisposable
{
    private const string Opening = "C000" + Panic;
    private const string Panic = "B04000B07B00B07800";

    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "warmup.exe" : "warmup");

    private readonly SystemMonotonicClock _clock = new();
    private readonly ReportList _reports = new();
    private readonly NamedPipe _piano = new();
    private readonly ChildPlayer _child;
    private readonly PlayerClient _client;

    public PlayerProcessTests()
    {
        _child = new(new ProcessStartInfo(Program, ["player"]));
        _client = new(_child);
        _client.Reported += _reports.Add;
        _client.Open(_piano.Choice);
        _client.Silence(1);
        _reports.WaitFor(1);
    }

    public void Dispose()
    {
        _client.Dispose();
        _piano.Dispose();
    }

    [Fact]
    public void It_plays_and_is_silent_when_told()
    {
        Assert.Equal($"Playing on {_piano.Path}.", _reports.All[0].Sentence);
        SoundOneNote();
        _client.Silence(2);
        Assert.Equal($"803C40{Panic}", _piano.WaitFor(12));
    }

    [Fact]
    public void The_end_of_its_input_ends_it_silent()
    {
        SoundOneNote();
        using Process process = Process.GetProcessById(_child.ProcessId);
        _child.ToPlayer.Dispose(); // as when the console is killed

        Assert.Equal($"803C40{Panic}", _piano.WaitFor(12));
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(30)));
    }

    [Fact]
    public void A_device_that_vanishes_is_told_of_and_one_that_returns_is_greeted_and_played_on()
    {
        SoundOneNote();
        _piano.Unplug();
        Assert.Equal(PlayerReportKind.PortLost, _reports.WaitFor(2)[1].Kind);

        _piano.PlugIn();
        Assert.Equal((PlayerReportKind.PortOpened, $"The port {_piano.Path} is back. Space goes on."), (_reports.WaitFor(3)[2].Kind, _reports.All[2].Sentence));
        Assert.Equal(Opening, _piano.WaitFor(11));
    }

    [Fact]
    public void Its_standard_output_leads_to_standard_error_so_that_no_library_can_print_among_the_frames()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs /proc.");
        string folder = $"/proc/{_child.ProcessId}/fd";
        Assert.Equal(File.ResolveLinkTarget($"{folder}/2", false)?.Name, File.ResolveLinkTarget($"{folder}/1", false)?.Name);
    }

    [Fact]
    public void It_collects_no_garbage_in_the_background()
    {
        using JsonDocument settings = JsonDocument.Parse(File.ReadAllText(Path.ChangeExtension(Program, null) + ".runtimeconfig.json"));
        Assert.False(settings.RootElement.GetProperty("runtimeOptions").GetProperty("configProperties").GetProperty("System.GC.Concurrent").GetBoolean());
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs /proc.");
        string[] threads = [.. Directory.EnumerateDirectories($"/proc/{_child.ProcessId}/task").Select(task => File.ReadAllText(Path.Combine(task, "comm")).Trim())];
        Assert.Contains("player input", threads);
        Assert.DoesNotContain(threads, name => name.Contains("BGC", StringComparison.Ordinal));
    }

    private void SoundOneNote()
    {
        Assert.Equal(Opening, _piano.WaitFor(11));
        _client.SetTimeline(1, new(Tempo.FromBeatsPerMinute(60), Beats.Zero, _clock.Now));
        _client.Play(1, [new(60, Beats.Zero, Beats.FromBeats(600), 64)]);
        _client.Pump(_clock.Now);
        Assert.Equal("903C40", _piano.WaitFor(3));
    }
}
