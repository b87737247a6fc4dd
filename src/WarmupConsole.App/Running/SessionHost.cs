using System.Collections.Concurrent;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.App.Running;

/// <summary>
/// Performs what the live machine decides: notes to the player at once, facts to the log, the new state to the screen.
/// One queue, one thread: inputs may be posted from anywhere, <see cref="Step"/> is called by one thread only.
/// </summary>
internal sealed class SessionHost : ILiveConsole
{
    // Longer than any machine is too busy: it slept, and nothing sounded meanwhile.
    private static readonly TimeSpan Sleep = TimeSpan.FromSeconds(5);

    private readonly ConcurrentQueue<(LiveInput Input, Moment At)> _inputs = new();
    private readonly IMonotonicClock _clock;
    private readonly IPlayer _player;
    private readonly Action<SessionEvent> _record;
    private readonly OwnNotes _own = new();
    private volatile LiveSession _session;
    private volatile ConsoleStatus _status = new("", "", false);

    /// <param name="start">The session and its first effects, which are performed here.</param>
    /// <param name="clock">The clock shared with the player.</param>
    /// <param name="player">The piano.</param>
    /// <param name="record">Takes facts for the log without waiting.</param>
    internal SessionHost(LiveOutcome start, IMonotonicClock clock, IPlayer player, Action<SessionEvent> record)
    {
        (_session, _clock, _player, _record) = (start.Session, clock, player, record);
        Perform(start.Effects);
    }

    public event Action? Changed;

    /// <summary>Raised on the screen's thread once the first picture stands.</summary>
    internal event Action? FirstPicture;

    /// <summary>Raised when an input was posted: time to call <see cref="Step"/>.</summary>
    internal event Action? Posted;

    public LiveSession Session => _session;

    public ConsoleStatus Status => _status;

    public Moment Now => _clock.Now;

    public IReadOnlyList<Exercise> Exercises { get; internal set; } = [];

    public PlayedKey? NewestKey { get; private set; }

    /// <summary>Pedals and played keys, where there is an input.</summary>
    internal Hands? Hands { get; set; }

    public void Learn(PedalUse? use) => Hands?.Learn(use);

    /// <summary>True when a key that went down or up was none that anybody played, but what the console plays come back.</summary>
    internal bool IsEcho(int midi, bool isDown) => _own.IsEcho(midi, isDown, _clock.Now);

    /// <summary>A key of the piano was struck; from any thread.</summary>
    internal void Play(int midi)
    {
        NewestKey = new(midi, _clock.Now);
        if (_session.Follows)
        {
            Post(new LiveInput.NoteHeard(midi));
        }

        Changed?.Invoke();
    }

    public void Insert(Exercise exercise, bool now) =>
        Post(new LiveInput.Insert(WarmupBuilder.Alone(_session.Warmup.Choir, exercise), ExerciseFile.Write([exercise]), now));

    public void Post(LiveInput input)
    {
        _inputs.Enqueue((input, _clock.Now));
        Posted?.Invoke();
    }

    /// <summary>True when the screen was left to edit the plan.</summary>
    internal bool IsPlanAsked { get; private set; }

    public bool GivesTour { get; internal set; }

    /// <summary>True once the tour was seen or passed over.</summary>
    internal bool IsTourOver { get; private set; }

    public void TourIsOver() => IsTourOver = true;

    public void AskForPlan() => IsPlanAsked = true;

    public void FirstPictureStands() => FirstPicture?.Invoke();

    public string? WhyNot(LiveAction action) => LiveMachine.WhyNot(_session, action, _clock.Now);

    /// <summary>Changes what is shown beside the session.</summary>
    internal void Show(Func<ConsoleStatus, ConsoleStatus> change)
    {
        lock (_inputs) // reports come from several threads, and none may be lost
        {
            _status = change(_status);
        }

        Changed?.Invoke();
    }

    /// <summary>Handles what was posted and what has become due; returns when to be called again, or null for only when something is posted.</summary>
    internal Moment? Step()
    {
        LiveSession before = _session;
        HoldAfterSleep();
        while (_inputs.TryDequeue(out (LiveInput Input, Moment At) next))
        {
            Handle(next.Input, next.At);
        }

        HoldAfterSleep(); // once more: music may have been asked for the moment before
        if (_session.NextWake is { } due && due <= _clock.Now)
        {
            Handle(new LiveInput.TimePassed(), _clock.Now);
        }

        if (!ReferenceEquals(before, _session))
        {
            Changed?.Invoke();
        }

        return Earliest(_player.Pump(_clock.Now), _session.NextWake);
    }

    /// <summary>What was due while the machine slept was not sung: the music is held where it stood.</summary>
    private void HoldAfterSleep()
    {
        if (_session.NextWake is { } due && _clock.Now - due > Sleep)
        {
            Handle(new LiveInput.Trouble(AppTexts.Slept), new(due.Nanoseconds - 1));
        }
    }

    private void Handle(LiveInput input, Moment at)
    {
        LiveOutcome outcome = LiveMachine.Handle(_session, input, at);
        _session = outcome.Session;
        Perform(outcome.Effects);
    }

    private void Perform(IReadOnlyList<LiveEffect> effects)
    {
        foreach (LiveEffect effect in effects)
        {
            Perform(effect);
        }
    }

    private void Perform(LiveEffect effect)
    {
        switch (effect)
        {
            case LiveEffect.SetTimeline timeline:
                _own.SetTimeline(timeline.Timeline, _clock.Now);
                _player.SetTimeline(timeline.Generation, timeline.Timeline);
                break;
            case LiveEffect.Play play:
                _own.Play(play.Notes, _clock.Now);
                _player.Play(play.Generation, play.Notes);
                break;
            case LiveEffect.Silence silence:
                _player.Silence(silence.Generation);
                _own.Silence(_clock.Now);
                break;
            case LiveEffect.Record fact:
                _record(fact.Event);
                if (fact.Event is FollowChanged { Follows: true })
                {
                    Hands?.BeginToFollow();
                }

                break;
            default:
                throw new InvalidOperationException($"No way to perform {effect.GetType().Name}.");
        }
    }

    private static Moment? Earliest(Moment? a, Moment? b) => (a, b) switch
    {
        ({ } x, { } y) => Moment.Earlier(x, y),
        _ => a ?? b,
    };
}
