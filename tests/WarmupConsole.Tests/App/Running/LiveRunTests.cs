using WarmupConsole.App.Running;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Sessions.Live;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App.Running;

public sealed class LiveRunTests : IDisposable
{
    private readonly List<PlayerInThread> _links = [];
    private readonly VirtualClock _clock = new();
    private readonly ReportList _reports = new();
    private readonly RunLog _log;
    private readonly LiveRun _run;

    public LiveRunTests()
    {
        RestartingPlayer player = new(Start, _clock);
        player.Reported += _reports.Add;
        _log = new(new OpenedLog(null, "no disk"), null, new VirtualWall(_clock, new DateOnly(2027, 2, 16)), _clock);
        _run = new(LiveMachine.Start(LiveFixtures.Whole, _clock.Now), _clock, player, PortChoice.First, _log);
        _reports.WaitFor(1);
    }

    private LiveSession Session => _run.Host.Session;

    public void Dispose() => _run.Close();

    [Fact]
    public void A_dead_player_holds_the_run_and_go_on_leads_in_to_the_same_key_with_a_new_one()
    {
        ReachSecondRung();
        _links[0].Loop.Stop();
        _reports.WaitFor(3);
        _run.Host.Step();

        Assert.Equal((LiveState.Rung, 1, Hold.Silenced), (Session.State, Session.RungIndex, Session.Hold));
        Assert.Equal(("The player ended by itself. It is started again: go on leads in to the same key.", true), (Session.Notice!.Text, Session.Notice.IsTrouble));
        Assert.Equal("Playing.", _run.Host.Status.Port);

        Do(LiveAction.GoOn);
        Assert.Equal((LiveState.Cue, 1, Hold.None), (Session.State, Session.RungIndex, Session.Hold));
        _links[1].Waiter.MoveTo(_clock.Now.Nanoseconds / 1e9);
        string[] silence = ["B04000", "B07B00", "B07800"];
        string[] sent = _links[1].Port.WaitFor(11);
        Assert.Equal(["C000", .. silence, .. silence, .. silence], sent[..10]); // taking over, holding, leading in anew
        Assert.StartsWith("90", sent[10], StringComparison.Ordinal);
    }

    [Fact]
    public void Silence_that_comes_by_two_ways_is_one_hold()
    {
        ReachSecondRung();
        List<SessionEvent> facts = [];
        SessionHost host = new(new(Session, []), _clock, new InProcessPlayer(_clock, _ => new(new NullPort(), true, "")), facts.Add);
        host.Post(new LiveInput.Act(LiveAction.Silence));
        host.Step();
        host.Post(new LiveInput.Act(LiveAction.Silence));
        host.Step();

        Assert.Single(facts.OfType<HoldChanged>());
        Assert.Equal(Hold.Silenced, host.Session.Hold);
        host.Post(new LiveInput.Act(LiveAction.GoOn));
        host.Step();
        Assert.Equal((LiveState.Cue, 1, Hold.None), (host.Session.State, host.Session.RungIndex, host.Session.Hold));
    }

    private PlayerClient Start(int before)
    {
        PlayerInThread link = new();
        _links.Add(link);
        return new PlayerClient(link);
    }

    private void ReachSecondRung()
    {
        Do(LiveAction.GoOn);
        Do(LiveAction.StepOn);
        Do(LiveAction.GoOn);
        while ((Session.State, Session.RungIndex) != (LiveState.Rung, 1))
        {
            _clock.MoveTo(_clock.Now + TimeSpan.FromMilliseconds(100));
            _run.Host.Step();
        }
    }

    private void Do(LiveAction action)
    {
        _run.Host.Post(new LiveInput.Act(action));
        _run.Host.Step();
    }
}
