using WarmupConsole.App;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Simulation;

/// <summary>A host that is not run for a while: busy, or asleep with the whole machine.</summary>
public sealed class SleepTests : IDisposable
{
    private readonly VirtualClock _clock = new();
    private readonly InProcessPlayer _player;
    private readonly List<SessionEvent> _logged = [];
    private readonly SessionHost _host;

    public SleepTests()
    {
        _player = new(_clock, _ => new(new NullPort(), true, ""));
        _host = new(LiveMachine.Start(LiveFixtures.Whole, _clock.Now), _clock, _player, _logged.Add);
        foreach (LiveAction action in new[] { LiveAction.GoOn, LiveAction.StepOn, LiveAction.GoOn })
        {
            _host.Post(new LiveInput.Act(action));
        }

        while (_host.Session.State != LiveState.Rung)
        {
            _player.Advance(_host.Step() ?? throw new InvalidOperationException("Nothing is due."));
        }
    }

    public void Dispose() => _player.Dispose();

    [Fact]
    public void After_a_sleep_the_music_is_held_at_the_rung_that_was_sung_and_the_director_is_told()
    {
        _player.Advance(_clock.Now + TimeSpan.FromMinutes(7));
        Assert.Null(_host.Step());

        Assert.Equal((LiveState.Rung, 0, Hold.Silenced), (_host.Session.State, _host.Session.RungIndex, _host.Session.Hold));
        Assert.Equal(AppTexts.Slept, _host.Session.Notice?.Text);
        Assert.False(Assert.Single(_logged.OfType<RungEnded>()).Whole);
    }

    [Fact]
    public void Music_that_was_asked_for_the_moment_before_a_sleep_is_held_too()
    {
        _host.Post(new LiveInput.Act(LiveAction.Silence));
        _host.Step();
        _host.Post(new LiveInput.Act(LiveAction.GoOn));
        _player.Advance(_clock.Now + TimeSpan.FromMinutes(13));
        Assert.Null(_host.Step());

        Assert.Equal((0, Hold.Silenced), (_host.Session.RungIndex, _host.Session.Hold));
        Assert.Equal(AppTexts.Slept, _host.Session.Notice?.Text);
    }

    [Fact]
    public void Half_a_second_of_business_elsewhere_loses_no_beat()
    {
        _player.Advance(_host.Session.NextWake!.Value + TimeSpan.FromMilliseconds(500));
        Assert.NotNull(_host.Step());

        Assert.Equal(Hold.None, _host.Session.Hold);
        Assert.DoesNotContain(_logged.OfType<RungEnded>(), rung => !rung.Whole);
    }
}
