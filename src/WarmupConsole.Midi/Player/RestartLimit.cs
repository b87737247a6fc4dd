using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Player;

/// <summary>How often a child process may be started again: one that keeps ending would do so for ever.</summary>
/// <param name="clock">Measures how often that happens.</param>
public sealed class RestartLimit(IMonotonicClock clock)
{
    /// <summary>So many restarts within a minute, and no more.</summary>
    public const int Most = 3;

    private static readonly TimeSpan Within = TimeSpan.FromMinutes(1);
    private readonly Queue<Moment> _restarts = [];

    /// <summary>Counts a restart, if one is still allowed. Used by one thread at a time.</summary>
    public bool MayStartAgain()
    {
        Moment now = clock.Now;
        while (_restarts.TryPeek(out Moment first) && now - first > Within)
        {
            _restarts.Dequeue();
        }

        if (_restarts.Count == Most)
        {
            return false;
        }

        _restarts.Enqueue(now);
        return true;
    }
}
