using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Simulation;

/// <summary>A wall clock that somebody sets now and then; what it measures goes with the monotonic clock all the same.</summary>
internal sealed class SimulatedWall(VirtualClock clock) : TimeProvider
{
    private static readonly DateTimeOffset Start = new(2027, 2, 16, 19, 30, 0, TimeSpan.Zero);

    private TimeSpan _set;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override long TimestampFrequency => 1_000_000_000;

    public override DateTimeOffset GetUtcNow() => Start + _set + (clock.Now - default(Moment));

    public override long GetTimestamp() => clock.Now.Nanoseconds;

    internal void Step(TimeSpan by) => _set += by;
}
