using System.Diagnostics;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>The machine's monotonic clock, the same for every process on it. For playing; the screen library has a clock of its own from the same source.</summary>
public sealed class SystemMonotonicClock : IMonotonicClock
{
    private const long NanosecondsPerSecond = 1_000_000_000;

    // Split into seconds and rest, so that clocks whose frequency does not divide a billion neither overflow nor lose digits.
    public Moment Now
    {
        get
        {
            (long seconds, long rest) = Math.DivRem(Stopwatch.GetTimestamp(), Stopwatch.Frequency);
            return new((seconds * NanosecondsPerSecond) + (rest * NanosecondsPerSecond / Stopwatch.Frequency));
        }
    }
}
