using WarmupConsole.App.Running;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Sessions.Live;
using WarmupConsole.Tests.Storage.SessionLogs;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App.Running;

/// <summary>The wiring of a run, in virtual time. Only a restart happens on a thread of its own, and it is waited for by its report.</summary>
public sealed class LiveRunTests : IDisposable
{
    private const int MostTurns = 1000;
    private static readonly string[] Panic = ["B04000", "B07B00", "B07800"];

    private readonly List<MortalPlayer> _players = [];
    private readonly VirtualClock _clock = new();
    private readonly ReportList _reports = new();
    private readonly FaultyFile _file = new();
    private readonly RunLog _log;
    private readonly RestartingPlayer _player;
    private readonly LiveRun _run;

    public LiveRunTests()
    {
        _player = new(Start, _clock);
        VirtualWall wall = new(_clock, new DateOnly(2027, 2, 16));
        _log = new(new SessionLogWriter(_file, LogPosition.New), null, wall, _clock);
        _run = new(LiveMachine.Start(LiveFixtures.Whole, _clock.Now), _clock, _player, PortChoice.First, _log);
        _player.Reported += _reports.Add; // after the run's own listener: what is waited for here, the run has heard
        _run.OpenPort();
        _reports.WaitFor(1);
        ReachSecondRung();
    }

    private LiveSession Session => _run.Host.Session;

    public void Dispose() => _run.Close();

    [Fact]
    public void A_dead_player_holds_the_run_and_go_on_leads_in_to_the_same_key_with_a_new_one()
    {
        _players[0].Die();
        _reports.WaitFor(3); // the first port, its end, then the port that the new one opened
        _run.Host.Step();

        Assert.Equal((LiveState.Rung, 1, Hold.Silenced), (Session.State, Session.RungIndex, Session.Hold));
        Assert.Equal(("The player ended by itself. It is started again: go on leads in to the same key.", true), (Session.Notice!.Text, Session.Notice.IsTrouble));
        Assert.Equal("Playing.", _run.Host.Status.Port);

        Do(LiveAction.GoOn);
        Assert.Equal((LiveState.Cue, 1, Hold.None), (Session.State, Session.RungIndex, Session.Hold));
        _players[1].Advance(_clock.Now);
        string[] sent = [.. _players[1].Sent];
        Assert.Equal(["C000", .. Panic, .. Panic, .. Panic], sent[..10]); // taking over, holding, leading in anew
        Assert.All(sent[10..], message => Assert.StartsWith("90", message, StringComparison.Ordinal));
        Assert.NotEmpty(sent[10..]);
    }

    [Fact]
    public void The_dead_player_has_silenced_its_port_and_is_sent_nothing_more()
    {
        _players[0].Die();
        _reports.WaitFor(3);
        _run.Host.Step();
        string[] last = [.. _players[0].Sent];

        Do(LiveAction.GoOn);

        Assert.Equal(Panic, last[^3..]);
        Assert.Equal(last, _players[0].Sent);
        Assert.Equal(2, _players.Count);
    }

    public static TheoryData<string, LiveInput, LiveInput> TwoWays => new()
    {
        { "by the byte of the key, then by the key", new LiveInput.Act(LiveAction.Silence), new LiveInput.Act(LiveAction.Silence) },
        { "by the key, then by a lost port", new LiveInput.Act(LiveAction.Silence), new LiveInput.Trouble("The port was lost.") },
        { "by a lost port, then by the key", new LiveInput.Trouble("The port was lost."), new LiveInput.Act(LiveAction.Silence) },
    };

    [Theory]
    [MemberData(nameof(TwoWays), DisableDiscoveryEnumeration = true)]
    public void Silence_that_comes_by_two_ways_is_one_hold(string how, LiveInput first, LiveInput second)
    {
        int held = Logged<HoldChanged>().Count();
        foreach (LiveInput input in new[] { first, second })
        {
            _run.Host.Post(input);
            _run.Host.Step();
        }

        Assert.Equal((how, Hold.Silenced), (how, Session.Hold));
        Assert.Equal("silenced", Assert.Single(Logged<HoldChanged>().Skip(held)).Hold);
        Assert.False(Logged<RungEnded>().Last().Whole);
        Do(LiveAction.GoOn);
        Assert.Equal((LiveState.Cue, 1, Hold.None), (Session.State, Session.RungIndex, Session.Hold));
    }

    private MortalPlayer Start(int before)
    {
        MortalPlayer player = new(_clock);
        lock (_players)
        {
            _players.Add(player);
        }

        return player;
    }

    private IEnumerable<T> Logged<T>()
    {
        _log.Thread.Drain();
        return SessionLogReader.Read(_file.Held).Records.Select(record => record.Event).OfType<T>();
    }

    private void ReachSecondRung()
    {
        Do(LiveAction.GoOn);
        Do(LiveAction.StepOn);
        Do(LiveAction.GoOn);
        for (int turn = 0; (Session.State, Session.RungIndex) != (LiveState.Rung, 1); turn++)
        {
            Assert.True(turn < MostTurns, $"The second rung is never reached; the session is in {Session.State}.");
            Moment due = _run.Host.Step() ?? throw new InvalidOperationException($"In {Session.State} nothing is due.");
            _players[0].Advance(due);
            _run.Host.Step();
        }
    }

    private void Do(LiveAction action)
    {
        _run.Host.Post(new LiveInput.Act(action));
        _run.Host.Step();
    }
}
