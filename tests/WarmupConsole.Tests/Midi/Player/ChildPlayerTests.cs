using System.Diagnostics;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Player;

public class ChildPlayerTests
{
    [Fact]
    public void A_child_that_fails_is_reported_with_the_last_line_it_printed()
    {
        ReportList reports = new();
        using PlayerClient client = new(Shell("echo first >&2; echo no more memory >&2; echo >&2; exit 3"));
        client.Reported += reports.Add;
        client.Open(PortChoice.First);

        Assert.Equal(
            new(PlayerReportKind.PlayerEnded, "The player ended by itself (no more memory)."),
            Assert.Single(reports.WaitFor(1)));
    }

    [Fact]
    public void A_child_that_talks_no_protocol_is_given_up()
    {
        ReportList reports = new();
        using PlayerClient client = new(Shell("echo this is no frame at all, but it is long enough for one; cat >/dev/null"));
        client.Reported += reports.Add;
        client.Open(PortChoice.First);

        Assert.Equal(
            "The player's reports cannot be read: A frame of 26740 bytes was announced; the longest allowed is 4096.",
            Assert.Single(reports.WaitFor(1)).Sentence);
    }

    [Fact]
    public void A_child_ends_when_the_client_is_disposed_even_if_it_was_never_opened()
    {
        using ChildPlayer child = Shell("cat >/dev/null");
        using Process process = Process.GetProcessById(child.ProcessId);
        new PlayerClient(child).Dispose();

        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(30)));
    }

    [Fact]
    public void A_child_that_listens_to_nothing_is_ended_by_force_and_a_second_time_does_no_harm()
    {
        using ChildPlayer child = Shell("trap '' TERM; echo ready; while :; do sleep 60; done");
        using Process process = Process.GetProcessById(child.ProcessId);
        Assert.Equal('r', child.FromPlayer.ReadByte());
        child.Kill();
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(30)));
        child.Kill();
    }

    [Fact]
    public void A_thread_that_comes_to_run_when_it_was_disposed_still_finds_its_streams()
    {
        ChildPlayer child = Shell("cat >/dev/null");
        child.ToPlayer.Dispose();
        child.Dispose();
        Assert.Equal(-1, child.FromPlayer.ReadByte());
        Assert.Throws<ObjectDisposedException>(() => child.ToPlayer.WriteByte(0));
    }

    private static ChildPlayer Shell(string script)
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Needs a POSIX shell.");
        }

        return new(new ProcessStartInfo("/bin/sh", ["-c", script]));
    }
}
