using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>A director at the keys, in virtual time: inputs in, sessions and effects out.</summary>
internal sealed class LiveDriver
{
    private readonly List<LiveEffect> _effects = [];

    public LiveDriver(Warmup warmup, Moment? start = null)
    {
        Now = start ?? new Moment(1_000_000_000);
        Take(LiveMachine.Start(warmup, Now));
    }

    public Moment Now { get; set; }

    public LiveSession Session { get; private set; } = null!;

    /// <summary>How many inputs were sent.</summary>
    public int Inputs { get; private set; }

    public LiveInput? NewestInput { get; private set; }

    /// <summary>What the newest input led to.</summary>
    public IReadOnlyList<LiveEffect> Newest { get; private set; } = [];

    public IReadOnlyList<LiveEffect> Effects => _effects;

    public IReadOnlyList<SessionEvent> Events => [.. _effects.OfType<LiveEffect.Record>().Select(record => record.Event)];

    public IReadOnlyList<SessionEvent> NewestEvents => [.. Newest.OfType<LiveEffect.Record>().Select(record => record.Event)];

    public LiveDriver Act(params LiveAction[] actions)
    {
        foreach (LiveAction action in actions)
        {
            Send(new LiveInput.Act(action));
        }

        return this;
    }

    public LiveDriver Send(LiveInput input)
    {
        NewestInput = input;
        Inputs++;
        Take(LiveMachine.Handle(Session, input, Now));
        return this;
    }

    /// <summary>Time passes, and the session is told only at the end of it.</summary>
    public LiveDriver Pass(double seconds)
    {
        Now += TimeSpan.FromSeconds(seconds);
        return Send(new LiveInput.TimePassed());
    }

    /// <summary>Wakes the session whenever it wants to be woken, until it is in a state or only the director can go on.</summary>
    public LiveDriver RunTo(LiveState state)
    {
        do
        {
            Now = Session.NextWake ?? throw new InvalidOperationException($"In {Session.State} nothing is due.");
            Send(new LiveInput.TimePassed());
        }
        while (Session.State != state);
        return this;
    }

    private void Take(LiveOutcome outcome)
    {
        Session = outcome.Session;
        Newest = outcome.Effects;
        _effects.AddRange(outcome.Effects);
    }
}
