using System.IO.Pipes;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Midi.Protocol;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Player;

public class PlayerClientTests
{
    [Fact]
    public void Notes_cross_to_the_player_and_figures_come_back()
    {
        PlayerInThread link = new();
        ReportList reports = new();
        PlayerClient client = new(link);
        client.Reported += reports.Add;

        client.Open(PortChoice.First);
        client.SetTimeline(1, AtSixty);
        client.Play(1, [Note(60, 0, 1)]);
        Assert.Null(client.Pump(Second(0)));
        link.Port.WaitFor(2);
        client.Silence(2);
        Assert.Equal(["C000", "903C40", "803C40", "B04000", "B07B00", "B07800"], link.Port.WaitFor(6));
        client.Dispose();

        Assert.Equal([new(PlayerReportKind.PortOpened, "Playing.")], reports.All);
        Assert.Equal(Second(0), client.LastSilence);
        Assert.Equal(1, client.Onsets?.Played);
        Assert.True(link.Port.IsClosed);
    }

    [Fact]
    public void A_player_that_ends_unasked_is_reported_once_with_its_last_words()
    {
        using PlayerInThread link = new() { LastWords = "out of memory" };
        ReportList reports = new();
        using PlayerClient client = new(link);
        client.Reported += reports.Add;
        client.Open(PortChoice.First);
        reports.WaitFor(1);

        link.Loop.Stop();
        Assert.Equal(
            new(PlayerReportKind.PlayerEnded, "The player ended by itself (out of memory)."),
            reports.WaitFor(2)[1]);

        client.SetTimeline(1, AtSixty);
        client.Play(1, [Note(60, 0, 1)]);
        client.Pump(Second(0));
        client.Silence(2);
        Assert.Equal(2, reports.All.Count);
    }

    [Fact]
    public void A_player_that_takes_nothing_never_makes_the_host_wait_and_is_given_up()
    {
        using DeafLink link = new();
        ReportList reports = new();
        using PlayerClient client = new(link);
        client.Reported += reports.Add;
        client.Open(PortChoice.First);

        // Far more than pipe and queue hold: this loop would hang if a call waited for the player.
        for (int i = 0; i < 20_000; i++)
        {
            client.SetTimeline(i, AtSixty);
        }

        Assert.Equal(
            [new(PlayerReportKind.PlayerEnded, "The player did not answer any more and was ended.")],
            reports.All);
    }

    [Fact]
    public void A_player_that_leaves_a_silence_unanswered_for_two_seconds_is_given_up()
    {
        using DeafLink link = new();
        ReportList reports = new();
        using PlayerClient client = new(link);
        client.Reported += reports.Add;
        client.Open(PortChoice.First);
        client.Silence(1);
        Assert.Null(client.Pump(Second(0))); // opening a port may take longer than that
        link.Say(FrameTests.Bytes(new Frame.PortOpened("Open."), new Frame.Silenced(1, new(0)), new Frame.Refused("Heard.")));
        reports.WaitFor(2);
        Assert.Null(client.Pump(Second(5)));

        client.Silence(2);
        Moment look = client.Pump(Second(6))!.Value;
        client.Silence(3);
        Assert.Equal(look, client.Pump(Second(7)));
        Assert.Equal(2, reports.All.Count);
        Assert.Null(client.Pump(look));
        Assert.Equal(new(PlayerReportKind.PlayerEnded, "The player did not answer any more and was ended."), reports.WaitFor(3)[2]);
        Assert.True(link.IsKilled);
    }

    [Fact]
    public void Reports_that_cannot_be_read_end_the_player_for_the_host()
    {
        using DeafLink link = new();
        ReportList reports = new();
        using PlayerClient client = new(link);
        client.Reported += reports.Add;
        client.Open(PortChoice.First);
        link.Say(Hex.Bytes("00 00 06 00 00 00 00"));

        Assert.Equal(
            "The player's reports cannot be read: The check of a frame of type 06 is wrong.",
            Assert.Single(reports.WaitFor(1)).Sentence);
    }

    [Fact]
    public void Refusals_reach_the_director()
    {
        using DeafLink link = new();
        ReportList reports = new();
        using PlayerClient client = new(link);
        client.Reported += reports.Add;
        client.Open(PortChoice.First);
        link.Say(FrameTests.Bytes(new Frame.Refused("Full."), new Frame.PortLost("Lost."), new Frame.PortFailed("Failed.")));

        Assert.Equal(
            [new(PlayerReportKind.NotesRefused, "Full."), new(PlayerReportKind.PortLost, "Lost."), new(PlayerReportKind.PortFailed, "Failed.")],
            reports.WaitFor(3));
    }

    /// <summary>A player that reads nothing and says what the test says.</summary>
    private sealed class DeafLink : IPlayerLink
    {
        private readonly AnonymousPipeServerStream _toPlayer = new(PipeDirection.Out);
        private readonly AnonymousPipeServerStream _mouth = new(PipeDirection.Out);
        private readonly AnonymousPipeClientStream _ear;
        private readonly AnonymousPipeClientStream _fromPlayer;

        internal DeafLink()
        {
            _ear = new(PipeDirection.In, _toPlayer.ClientSafePipeHandle);
            _fromPlayer = new(PipeDirection.In, _mouth.ClientSafePipeHandle);
        }

        public Stream ToPlayer => _toPlayer;

        public Stream FromPlayer => _fromPlayer;

        public string LastWords => "";

        internal bool IsKilled { get; private set; }

        public void Kill() => IsKilled = true;

        public void Dispose()
        {
            _ear.Dispose();
            _mouth.Dispose();
        }

        internal void Say(byte[] bytes) => _mouth.Write(bytes);
    }
}
