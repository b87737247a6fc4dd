using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Player;

/// <summary>The same engine without process, thread or waiting: time passes when <see cref="Advance"/> is called.</summary>
public sealed class InProcessPlayer(VirtualClock clock, Func<PortChoice, PortOpening> openPort) : IPlayer
{
    private readonly PlayerEngine _engine = new(openPort);
    private readonly NoteFeed _feed = new();

    public event Action<PlayerReport>? Reported;

    public OnsetFigures? Onsets => _engine.Onsets;

    private Moment? Next => (_feed.NextTime, _engine.NextDue) switch
    {
        ({ } feed, { } due) => Moment.Earlier(feed, due),
        (var feed, var due) => feed ?? due,
    };

    public void Open(PortChoice choice) => Handle(new Frame.OpenPort(choice));

    public void SetTimeline(long generation, Timeline timeline)
    {
        _feed.SetTimeline(generation, timeline);
        Handle(new Frame.SetTimeline(generation, timeline));
    }

    public void Play(long generation, IReadOnlyList<ScoreNote> notes) => _feed.Add(generation, notes);

    public void Silence(long generation)
    {
        _feed.Forget(generation);
        Handle(new Frame.Silence(generation));
    }

    public Moment? Pump(Moment now)
    {
        foreach (Frame.Notes frame in _feed.TakeNear(now))
        {
            Handle(frame);
        }

        return _feed.NextTime;
    }

    /// <summary>Lets time pass: everything due is sent at exactly its due time.</summary>
    public void Advance(Moment to)
    {
        Pump(clock.Now);
        while (Next is { } next && next <= to)
        {
            clock.MoveTo(next);
            Pump(clock.Now);
            Report(_engine.RunDue(clock.Now));
        }

        clock.MoveTo(to);
    }

    public void Dispose()
    {
        if (_engine.End() is { } trouble)
        {
            Report(new Frame.PortFailed(trouble));
        }
    }

    private void Handle(Frame frame) => Report(_engine.Handle(frame, clock.Now));

    private void Report(Frame? frame)
    {
        if (PlayerReports.From(frame) is { } report)
        {
            Reported?.Invoke(report);
        }
    }
}
