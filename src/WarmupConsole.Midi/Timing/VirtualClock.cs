using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>A clock that stands still until it is moved: for checking a plan, and for tests.</summary>
public sealed class VirtualClock : IMonotonicClock
{
    public Moment Now { get; private set; }

    /// <summary>Moves on; a moment that has passed already changes nothing, for the clock never goes backwards.</summary>
    public void MoveTo(Moment moment) => Now = moment > Now ? moment : Now;
}
