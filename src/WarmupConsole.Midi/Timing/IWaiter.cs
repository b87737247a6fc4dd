using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>Waits for due times for the one thread that plays, and can be woken by any other.</summary>
public interface IWaiter : IMonotonicClock, IDisposable
{
    /// <summary>Waits until a moment, or (with null) until woken. A wake while nobody waits is kept for the next wait.</summary>
    /// <returns>True when the moment has come, false when woken.</returns>
    bool WaitUntil(Moment? due);

    void Wake();
}
