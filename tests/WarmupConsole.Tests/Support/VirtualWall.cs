using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Support;

/// <summary>A wall clock that goes with a virtual clock, from an evening in February on.</summary>
internal sealed class VirtualWall(VirtualClock clock) : TimeProvider
{
    private static readonly DateTimeOffset Start = new(2027, 2, 16, 19, 30, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override long TimestampFrequency => 1_000_000_000;

    public override DateTimeOffset GetUtcNow() => Start + (clock.Now - default(Moment));

    public override long GetTimestamp() => clock.Now.Nanoseconds;
}
