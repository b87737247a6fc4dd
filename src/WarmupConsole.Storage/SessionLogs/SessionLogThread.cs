using System.Collections.Concurrent;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// Takes events from any thread without ever waiting for the disk, and writes them on a thread of its own. Marks are flushed at
/// once and then told; others within a second. When the file fails, everything is kept and tried again, and the director is told once.
/// </summary>
public sealed class SessionLogThread : IDisposable
{
    /// <summary>More events than a long evening has; beyond it the disk has been gone for hours.</summary>
    public const int Capacity = 20_000;

    private static readonly TimeSpan FlushEvery = TimeSpan.FromSeconds(1);

    private readonly SessionLogWriter writer;
    private readonly TimeProvider time;
    private readonly ConcurrentQueue<Posted> posted = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly Lock gate = new();
    private readonly Thread thread;
    private readonly Queue<(long Sequence, int Fact)> unconfirmed = new();
    private int markFacts;
    private long lastFlush;
    private long urgentUpTo;
    private volatile bool isEnding;
    private bool isFailing;

    public SessionLogThread(SessionLogWriter writer, TimeProvider time)
    {
        (this.writer, this.time) = (writer, time);
        lastFlush = time.GetTimestamp();
        thread = new Thread(Run) { IsBackground = true, Name = "session log" };
    }

    /// <summary>So many of the facts about marks (made, moved, taken back) are safely on disk. Raised on the writing thread.</summary>
    public event Action<int>? MarksFlushed;

    /// <summary>All that was posted until now is safely on disk. Raised on the writing thread.</summary>
    public event Action? Flushed;

    /// <summary>The log cannot be written; the sentence is for the director. Raised once for each stretch of failures.</summary>
    public event Action<string>? Failed;

    /// <summary>After failures all is on disk again. Raised on the writing thread.</summary>
    public event Action? Recovered;

    /// <summary>Begins to write on a thread of its own.</summary>
    public void Start() => thread.Start();

    /// <summary>Hands an event over; never waits. What does not fit any more is told by <see cref="Failed"/>.</summary>
    public void Post(SessionEvent fact, DateTimeOffset at, Moment monotonic)
    {
        if (isEnding || posted.Count >= Capacity)
        {
            Failed?.Invoke(LogTexts.QueueFull);
            return;
        }

        posted.Enqueue(new(fact, at, monotonic));
        wake.Set();
    }

    /// <summary>Writes all that was posted, and flushes what is due. For the writing thread, and for tests without one.</summary>
    public void Drain()
    {
        lock (gate)
        {
            TakePosted();
            bool isDue = writer.FlushedSequence < urgentUpTo || time.GetElapsedTime(lastFlush) >= FlushEvery;
            if (writer.HasUnflushed)
            {
                Tell(isDue ? Flush() : writer.Write(), isDue);
            }
        }
    }

    /// <summary>Saves everything so far to a new file; null, or why it could not. From any thread.</summary>
    public string? SaveElsewhere(string path)
    {
        lock (gate)
        {
            TakePosted();
            return writer.SaveElsewhere(path);
        }
    }

    /// <summary>Writes and flushes the rest, then ends the thread.</summary>
    public void Dispose()
    {
        if (isEnding)
        {
            return;
        }

        isEnding = true;
        wake.Set();
        if (thread.IsAlive && Thread.CurrentThread != thread) // a fault on this very thread may be what closes everything
        {
            thread.Join();
        }

        lock (gate)
        {
            TakePosted();
            Tell(writer.HasUnflushed ? Flush() : null, true);
        }

        wake.Dispose();
    }

    private void Run()
    {
        while (!isEnding)
        {
            wake.WaitOne(FlushEvery);
            Drain();
        }
    }

    private void TakePosted()
    {
        while (posted.TryDequeue(out Posted next))
        {
            SessionRecord record = writer.Add(next.Event, next.At, next.Monotonic);
            bool isAboutMark = next.Event is MarkMade or MarkMoved or MarkUndone or MarkWorded;
            bool isTyped = next.Event is TonightTold or RehearsalMarked;
            if (isAboutMark)
            {
                unconfirmed.Enqueue((record.Sequence, ++markFacts));
            }

            urgentUpTo = isAboutMark || isTyped || next.Event is RunStarted or RunEnded ? record.Sequence : urgentUpTo;
        }
    }

    private string? Flush()
    {
        lastFlush = time.GetTimestamp();
        string? fault = writer.Flush();
        int confirmed = 0;
        while (unconfirmed.TryPeek(out (long Sequence, int Fact) first) && first.Sequence <= writer.FlushedSequence)
        {
            confirmed = unconfirmed.Dequeue().Fact;
        }

        if (confirmed > 0)
        {
            MarksFlushed?.Invoke(confirmed);
        }

        if (fault is null)
        {
            Flushed?.Invoke();
        }

        return fault;
    }

    /// <summary>What was written may still be lost: only a flush that succeeds ends a stretch of failures.</summary>
    private void Tell(string? fault, bool wasFlush)
    {
        if (fault is not null && !isFailing)
        {
            isFailing = true;
            Failed?.Invoke(LogTexts.Failed(fault));
        }
        else if (fault is null && wasFlush && isFailing)
        {
            isFailing = false;
            Recovered?.Invoke();
        }
    }

    private readonly record struct Posted(SessionEvent Event, DateTimeOffset At, Moment Monotonic);
}
