using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

/// <summary>Disks that are full, read-only or slow, and clocks that somebody sets.</summary>
public sealed class DiskTroubleTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<Exception, string> Refusals => new()
    {
        { new IOException("No space left on device"), "No space left on device" },
        { new IOException("Read-only file system"), "Read-only file system" },
        { new UnauthorizedAccessException("Access to the path is denied."), "this user has no permission for it" },
    };

    [Theory]
    [MemberData(nameof(Refusals), DisableDiscoveryEnumeration = true)]
    public void A_full_or_read_only_disk_is_told_once_and_everything_is_kept_for_elsewhere(Exception refusal, string reason)
    {
        using SessionLogThread log = new(new SessionLogWriter(new RefusingFile(refusal), LogPosition.New), TimeProvider.System);
        List<string> told = [];
        log.Failed += told.Add;
        log.MarksFlushed += _ => told.Add("confirmed");
        Post(log, LogSamples.Start, LogSamples.Mark);
        log.Drain();
        Post(log, new MarkUndone(1));
        log.Drain();
        Assert.Equal([LogTexts.Failed(reason)], told);
        Assert.Null(log.SaveElsewhere(folder.PathOf("elsewhere.jsonl")));
        Assert.Equal([1, 2, 3], SessionLogFile.Read(folder.PathOf("elsewhere.jsonl")).Value!.Records.Select(record => record.Sequence));
    }

    [Fact]
    public void A_slow_disk_delays_nothing_but_confirmations()
    {
        SlowFile file = new();
        using SessionLogThread log = new(new SessionLogWriter(file, LogPosition.New), TimeProvider.System);
        using SemaphoreSlim confirmed = new(0);
        log.MarksFlushed += _ => confirmed.Release();
        log.Start();
        Post(log, LogSamples.Mark);
        file.FlushBegan.Wait(TestContext.Current.CancellationToken);

        Post(log, LogSamples.Mark with { Id = 2 }, new RungEnded(0, 0, true)); // returns although the disk does not
        Assert.Equal(0, confirmed.CurrentCount);
        file.MayEnd.Set();
        Assert.True(confirmed.Wait(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
        log.Dispose();
        Assert.Equal(3, SessionLogReader.Read(file.Bytes).Records.Count);
    }

    [Fact]
    public void A_wall_clock_set_back_delays_no_flush_and_the_log_keeps_its_order()
    {
        FaultyFile file = new();
        SetClock clock = new();
        using SessionLogThread log = new(new SessionLogWriter(file, LogPosition.New), clock);
        log.Post(LogSamples.Start, clock.GetLocalNow(), new Moment(1));
        log.Drain();
        (clock.Wall, clock.Elapsed) = (-TimeSpan.FromHours(1), TimeSpan.FromSeconds(1));
        log.Post(new RungEnded(0, 0, true), clock.GetLocalNow(), new Moment(2));
        log.Drain();
        SessionLog read = SessionLogReader.Read(file.AfterPowerCut);
        Assert.Equal([1, 2], read.Records.Select(record => record.Sequence));
        Assert.Empty(read.Damages);
        Assert.True(read.Records[1].At < read.Records[0].At);
    }

    private static void Post(SessionLogThread log, params IReadOnlyList<SessionEvent> events)
    {
        foreach (SessionEvent fact in events)
        {
            log.Post(fact, LogSamples.Evening, new Moment(1));
        }
    }

    private sealed class RefusingFile(Exception refusal) : ILogFile
    {
        public void Append(ReadOnlySpan<byte> bytes) => throw refusal;

        public void FlushToDisk() => throw refusal;

        public void Dispose()
        {
        }
    }

    /// <summary>A file whose first flush takes until it is told to end.</summary>
    private sealed class SlowFile : ILogFile
    {
        private readonly FaultyFile file = new();

        internal ManualResetEventSlim FlushBegan { get; } = new();

        internal ManualResetEventSlim MayEnd { get; } = new();

        internal byte[] Bytes => file.AfterPowerCut;

        public void Append(ReadOnlySpan<byte> bytes) => file.Append(bytes);

        public void FlushToDisk()
        {
            FlushBegan.Set();
            MayEnd.Wait();
            file.FlushToDisk();
        }

        public void Dispose() => file.Dispose();
    }

    /// <summary>A wall clock and a stopwatch that go apart.</summary>
    private sealed class SetClock : TimeProvider
    {
        internal TimeSpan Wall { get; set; }

        internal TimeSpan Elapsed { get; set; }

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override DateTimeOffset GetUtcNow() => LogSamples.Evening.ToUniversalTime() + Wall;

        public override long GetTimestamp() => Elapsed.Ticks;
    }
}
