using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Player;

public sealed class RestartingPlayerTests : IDisposable
{
    private const string StartedAgain = "The player ended by itself (killed). It is started again: go on leads in to the same key.";
    private readonly List<PlayerInThread> _links = [];
    private readonly VirtualClock _clock = new();
    private readonly ReportList _reports = new();
    private readonly ManualResetEventSlim _mayStart = new(true);
    private readonly RestartingPlayer _player;

    public RestartingPlayerTests()
    {
        _player = new(Start, _clock);
        _player.Reported += _reports.Add;
        _player.Open(PortChoice.First);
        _reports.WaitFor(1);
    }

    public void Dispose()
    {
        _mayStart.Set();
        _player.Dispose();
        _mayStart.Dispose();
    }

    [Fact]
    public void It_is_started_by_the_first_opening_and_plays_what_it_was_handed_before()
    {
        int starts = 0;
        using PlayerInThread link = new();
        using RestartingPlayer player = new(_ => starts++ == 0 ? new PlayerClient(link) : throw new InvalidOperationException(), _clock);
        player.SetTimeline(1, AtSixty);
        player.Play(1, [Note(60, 0, 1)]);
        Assert.Null(player.Pump(Second(0)));
        Assert.Equal(0, starts);

        player.Open(PortChoice.First);
        Assert.Equal(["C000", "B04000", "B07B00", "B07800", "903C40"], link.Port.WaitFor(5));
    }

    [Fact]
    public void After_a_death_the_port_is_opened_again_silenced_and_played_on()
    {
        _player.SetTimeline(1, AtSixty);
        _player.Play(1, [Note(60, 0, 9)]);
        _player.Pump(Second(0));
        _links[0].Port.WaitFor(2);
        _links[0].Loop.Stop();

        Assert.Equal([Ended(StartedAgain), Opened], _reports.WaitFor(3).Skip(1));
        _player.Silence(2);
        _player.SetTimeline(2, AtSixty);
        _player.Play(2, [Note(62, 0, 1)]);
        _player.Pump(Second(0));
        Assert.Equal(["C000", "B04000", "B07B00", "B07800", "B04000", "B07B00", "B07800", "903E40"], _links[1].Port.WaitFor(8));
    }

    [Fact]
    public void What_is_handed_over_before_the_new_player_is_there_is_played_by_it()
    {
        _mayStart.Reset();
        _links[0].Loop.Stop();
        _reports.WaitFor(2);
        _player.SetTimeline(1, AtSixty);
        _player.Play(1, [Note(60, 0, 1)]);
        _player.Silence(2);
        _player.Play(2, [Note(62, 0, 1)]);
        Assert.Null(_player.Pump(Second(0)));

        _mayStart.Set();
        Assert.Equal(["C000", "B04000", "B07B00", "B07800", "903E40"], ThePort(1).WaitFor(5));
    }

    [Fact]
    public void The_fourth_death_within_a_minute_is_the_last_and_a_later_one_is_not()
    {
        for (int death = 0; death < 3; death++)
        {
            Die(death, StartedAgain);
        }

        _clock.MoveTo(Second(61));
        for (int death = 3; death < 6; death++)
        {
            Die(death, StartedAgain);
        }

        _links[6].Loop.Stop();
        Assert.Equal(
            Ended("The player ended by itself (killed). It was started 3 times within a minute and ended each time. The run goes on without sound; leave and start the console again to hear it."),
            _reports.WaitFor(14)[13]);
        _player.Silence(5);
        _player.Play(5, [Note(60, 0, 1)]);
        Assert.Null(_player.Pump(Second(62)));
        Assert.Equal(7, _links.Count);
    }

    [Fact]
    public void A_player_that_cannot_be_started_again_is_told_with_the_reason()
    {
        int starts = 0;
        using PlayerInThread link = new() { LastWords = "killed" };
        ReportList reports = new();
        using RestartingPlayer player = new(_ => starts++ == 0 ? new PlayerClient(link) : throw new IOException("No room."), _clock);
        player.Reported += reports.Add;
        player.Open(PortChoice.First);
        reports.WaitFor(1);
        link.Loop.Stop();

        Assert.Equal(
            [Ended(StartedAgain), Ended("The player could not be started: No room. The run goes on without sound; leave and start the console again to hear it.")],
            reports.WaitFor(3).Skip(1));
    }

    [Fact]
    public void Figures_are_those_of_the_last_player()
    {
        Die(0, StartedAgain);
        _player.SetTimeline(1, AtSixty);
        _player.Play(1, [Note(60, 0, 1), Note(64, 0, 1)]);
        _player.Pump(Second(0));
        ThePort(1).WaitFor(6);
        _player.Dispose();
        Assert.Equal(2, _player.Onsets?.Played);
    }

    private static PlayerReport Opened => new(PlayerReportKind.PortOpened, "Playing.");

    private static PlayerReport Ended(string sentence) => new(PlayerReportKind.PlayerEnded, sentence);

    private PlayerClient Start(int before)
    {
        _mayStart.Wait();
        PlayerInThread link = new() { LastWords = "killed" };
        lock (_links)
        {
            _links.Add(link);
        }

        return new PlayerClient(link);
    }

    private void Die(int death, string sentence)
    {
        int told = _reports.All.Count;
        _links[death].Loop.Stop();
        Assert.Equal([Ended(sentence), Opened], _reports.WaitFor(told + 2).Skip(told));
    }

    private AwaitedPort ThePort(int link)
    {
        _reports.WaitFor(3); // the port is told of once its player is there
        return _links[link].Port;
    }
}
