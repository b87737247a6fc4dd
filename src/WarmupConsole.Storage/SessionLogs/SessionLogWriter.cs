using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// Numbers records and adds them to a file. Everything is also kept in memory: what the file refuses is written again with the
/// next record, and all of it can be saved elsewhere. Not for use by two threads at once.
/// </summary>
public sealed class SessionLogWriter : IDisposable
{
    private readonly ILogFile file;
    private readonly LogPosition start;
    private readonly bool startsTorn;
    private readonly List<byte[]> lines = [];
    private int written;
    private int flushed;
    private bool needsNewline;

    public SessionLogWriter(ILogFile file, LogPosition start)
    {
        (this.file, this.start) = (file, start);
        startsTorn = start.Before.Length > 0 && start.Before.Span[^1] != LogFormat.Newline;
        needsNewline = startsTorn;
    }

    /// <summary>Number of the last record given to the writer.</summary>
    public long LastSequence => start.NextSequence + lines.Count - 1;

    /// <summary>Number of the last record that is safely on disk.</summary>
    public long FlushedSequence => start.NextSequence + flushed - 1;

    /// <summary>True while the file lacks something that the writer has, or it is not safely on disk.</summary>
    public bool HasUnflushed => flushed < lines.Count;

    /// <summary>Takes a record in, without touching the file.</summary>
    public SessionRecord Add(SessionEvent fact, DateTimeOffset at, Moment monotonic)
    {
        SessionRecord record = new(LastSequence + 1, at, start.Epoch, monotonic, fact);
        lines.Add([.. RecordText.Write(record), LogFormat.Newline]);
        return record;
    }

    /// <summary>Writes what the file does not have yet; null, or why it could not.</summary>
    public string? Write() => Try(WriteRest, RetryFailedWrite);

    /// <summary>Writes what is missing and flushes it to disk; null, or why it could not.</summary>
    public string? Flush() => Write() ?? Try(FlushRest, RetryFailedFlush);

    /// <summary>Saves everything, also what the file had before, to a new file; null, or why it could not.</summary>
    public string? SaveElsewhere(string path)
    {
        ReadOnlySpan<byte> gap = startsTorn ? [LogFormat.Newline] : [];
        return NewFile.Write(path, [.. start.Before.Span, .. gap, .. lines.SelectMany(line => line)]);
    }

    public void Dispose() => file.Dispose();

    private static string? Try(Action act, Action failed)
    {
        try
        {
            act();
            return null;
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            failed();
            return FileFault.Reason(fault);
        }
    }

    /// <summary>A piece of the line may have been written: the next try begins on a new one.</summary>
    private void RetryFailedWrite() => needsNewline = true;

    /// <summary>The system may have dropped what it could not flush, so all of it is written once more.</summary>
    private void RetryFailedFlush() => (written, needsNewline) = (flushed, true);

    private void WriteRest()
    {
        while (written < lines.Count)
        {
            file.Append(needsNewline ? [LogFormat.Newline, .. lines[written]] : lines[written]);
            needsNewline = false;
            written++;
        }
    }

    private void FlushRest()
    {
        file.FlushToDisk();
        flushed = written;
    }
}
