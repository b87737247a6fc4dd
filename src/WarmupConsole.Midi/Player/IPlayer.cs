using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// The piano as the host sees it. Calls never block and never wait for a device. Every call carries a generation;
/// what is older than the last silence is never played. Calls come from one thread.
/// </summary>
public interface IPlayer : IDisposable
{
    /// <summary>Reports from the player (port opened or lost, player ended). Raised on any thread.</summary>
    event Action<PlayerReport>? Reported;

    /// <summary>How punctual the notes were; null until a player in a process of its own has ended.</summary>
    OnsetFigures? Onsets { get; }

    /// <summary>Begins, or changes to another port; what came of it is reported. Subscribe to <see cref="Reported"/> first.</summary>
    void Open(PortChoice choice);

    /// <summary>Beats mean these moments from now on, also for notes handed over before.</summary>
    void SetTimeline(long generation, Timeline timeline);

    /// <summary>Notes at absolute beats of the timeline, in any order. They are passed on a few bars ahead at most, by <see cref="Pump"/>.</summary>
    void Play(long generation, IReadOnlyList<ScoreNote> notes);

    /// <summary>Stops every note at once and forgets every note of an earlier generation.</summary>
    void Silence(long generation);

    /// <summary>Passes on the notes that are near, and says when to be called again; null when nothing is waiting.</summary>
    Moment? Pump(Moment now);
}
