using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>The clock for playing and measuring; never for dates.</summary>
public interface IMonotonicClock
{
    Moment Now { get; }
}
