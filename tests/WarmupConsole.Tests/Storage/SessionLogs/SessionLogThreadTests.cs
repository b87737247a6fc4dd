using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

public sealed class SessionLogThreadTests : IDisposable
{
    private readonly FaultyFile file = new();
    private readonly SteppedTime time = new();
    private readonly SessionLogThread log;
    private readonly List<int> confirmed = [];
    private readonly List<string> failures = [];

    public SessionLogThreadTests()
    {
        log = new(new SessionLogWriter(file, LogPosition.New), time);
        log.MarksFlushed += confirmed.Add;
        log.Failed += failures.Add;
    }

    public void Dispose() => log.Dispose();

    [Fact]
    public void A_confirmed_mark_survives_a_power_cut()
    {
        Post(LogSamples.Start, LogSamples.Mark);
        log.Drain();
        Assert.Equal([1], confirmed);
        Assert.Contains(SessionLogReader.Read(file.AfterPowerCut).Records, record => record.Event is MarkMade { Id: 1 });
    }

    [Fact]
    public void Other_events_are_written_at_once_and_flushed_within_a_second()
    {
        Post(new RungEnded(0, 0, true));
        log.Drain();
        Assert.Equal((1, 0), (SessionLogReader.Read(file.Bytes).Records.Count, file.Flushes));
        time.Advance(TimeSpan.FromSeconds(1));
        log.Drain();
        Assert.Single(SessionLogReader.Read(file.AfterPowerCut).Records);
        Assert.Empty(confirmed);
    }

    [Fact]
    public void One_flush_confirms_all_the_marks_before_it()
    {
        Post(LogSamples.Mark, LogSamples.Mark with { Id = 2 }, LogSamples.Mark with { Id = 3 });
        log.Drain();
        Assert.Equal([3], confirmed);
        Assert.Equal(1, file.Flushes);
    }

    [Fact]
    public void A_mark_moved_or_taken_back_is_confirmed_like_a_new_one()
    {
        Post(LogSamples.Mark);
        log.Drain();
        Post(new MarkMoved(1, 1, 0));
        log.Drain();
        Post(new MarkUndone(1));
        log.Drain();
        Assert.Equal([1, 2, 3], confirmed);
    }

    [Fact]
    public void A_failing_file_is_told_once_and_its_marks_are_confirmed_only_when_it_works_again()
    {
        file.RefusesWrites = true;
        Post(LogSamples.Start, LogSamples.Mark);
        log.Drain();
        Post(new MarkUndone(1));
        log.Drain();
        Assert.Equal(LogTexts.Failed("No space left on device"), Assert.Single(failures));
        Assert.Empty(confirmed);
        file.RefusesWrites = false;
        log.Drain();
        Assert.Equal([2], confirmed);
        Assert.Equal(3, SessionLogReader.Read(file.AfterPowerCut).Records.Count);
    }

    [Fact]
    public void While_only_flushing_fails_it_is_told_once_and_once_when_all_is_on_disk_again()
    {
        int recovered = 0;
        log.Recovered += () => recovered++;
        file.RefusesFlush = true;
        for (int i = 0; i < 3; i++)
        {
            Post(LogSamples.Mark);
            log.Drain();
            Post(new HoldChanged("paused"));
            log.Drain();
        }

        Assert.Single(failures);
        Assert.Equal(0, recovered);
        file.RefusesFlush = false;
        Post(LogSamples.Mark);
        log.Drain();
        log.Drain();
        Assert.Equal(1, recovered);
    }

    [Fact]
    public void What_was_only_just_posted_is_saved_elsewhere_too()
    {
        using TemporaryFolder folder = new();
        file.RefusesWrites = true;
        Post(LogSamples.Start, LogSamples.Mark);
        Assert.Null(log.SaveElsewhere(folder.PathOf("saved.jsonl")));
        Assert.Equal(2, SessionLogFile.Read(folder.PathOf("saved.jsonl")).Value!.Records.Count);
    }

    [Fact]
    public void Beyond_its_capacity_an_event_is_refused_aloud()
    {
        Post([.. Enumerable.Range(0, SessionLogThread.Capacity).Select(round => new RoundStarted(0, round))]);
        Assert.Empty(failures);
        Post(new RoundStarted(1, 0));
        Assert.Equal([LogTexts.QueueFull], failures);
    }

    [Fact]
    public void Its_own_thread_confirms_marks_and_its_end_flushes_the_rest()
    {
        using ManualResetEventSlim flushed = new();
        log.MarksFlushed += _ => flushed.Set();
        log.Start();
        Post(LogSamples.Start, LogSamples.Mark);
        Assert.True(flushed.Wait(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
        Post(new RungEnded(0, 0, true));
        log.Dispose();
        Assert.Equal([1, 2, 3], SessionLogReader.Read(file.AfterPowerCut).Records.Select(record => record.Sequence));
    }

    private void Post(params IReadOnlyList<SessionEvent> events)
    {
        foreach (SessionEvent fact in events)
        {
            log.Post(fact, LogSamples.Evening, new Moment(1));
        }
    }

    /// <summary>Time that stands until it is moved.</summary>
    private sealed class SteppedTime : TimeProvider
    {
        private long now;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => now;

        internal void Advance(TimeSpan by) => now += by.Ticks;
    }
}
