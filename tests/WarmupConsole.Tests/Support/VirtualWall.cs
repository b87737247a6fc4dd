using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Support;

/// <summary>A wall clock that goes with a virtual clock, from half past seven in the evening of a day on.</summary>
internal sealed class VirtualWall(VirtualClock clock, DateOnly day) : TimeProvider
{
    private readonly DateTimeOffset _start = new(day, new TimeOnly(19, 30), TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override long TimestampFrequency => 1_000_000_000;

    public override DateTimeOffset GetUtcNow() => _start + (clock.Now - default(Moment));

    public override long GetTimestamp() => clock.Now.Nanoseconds;
}
