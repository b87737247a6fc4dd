using System.Globalization;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>A session log on disk, held for writing by its lock until it is disposed.</summary>
public sealed class SessionLogFile : IDisposable
{
    private const int MostBytes = 256 * 1024 * 1024;

    private readonly LogLock held;

    private SessionLogFile(string path, LogLock held, SessionLogWriter writer, SessionLog log)
    {
        (Path, Writer, Log) = (path, writer, log);
        this.held = held;
    }

    public string Path { get; }

    public SessionLogWriter Writer { get; }

    /// <summary>What it held when it was opened.</summary>
    public SessionLog Log { get; }

    /// <summary>The name for a run that begins at a local wall time: "2027-02-16T19-30-05.jsonl".</summary>
    public static string NameFor(DateTimeOffset start) =>
        start.ToString(LogFormat.StartPattern, CultureInfo.InvariantCulture) + LogFormat.FileExtension;

    /// <summary>Reads a log without holding it.</summary>
    public static FileRead<SessionLog> Read(string path) => BoundedFile.Read(path, MostBytes, SessionLogReader.Read);

    /// <summary>True while a console on this machine writes the log: then its end is not the end of the run.</summary>
    public static bool IsBeingWritten(string path) => LogLock.IsHeld(path);

    /// <summary>Makes a new log in a folder, which is made if need be.</summary>
    public static OpenedLog Create(string folder, DateTimeOffset start, string machine) => Guarded(() =>
    {
        Directory.CreateDirectory(folder);
        string path = System.IO.Path.Combine(folder, NameFor(start));
        return Held(path, machine, held => Open(path, held, FileMode.CreateNew, LogPosition.New));
    });

    /// <summary>Opens a log so that a run that was cut off goes on in it, in a new epoch; the table of docs/session-log.md decides.</summary>
    public static OpenedLog OpenForResume(string path, string machine) => Guarded(() => Held(path, machine, held =>
    {
        FileRead<byte[]> bytes = BoundedFile.Read(path, MostBytes);
        return bytes.IsGood ? Resume(path, held, bytes.Value) : new(null, bytes.Problems[0].Message);
    }));

    public void Dispose()
    {
        Writer.Dispose();
        held.Dispose();
    }

    private static OpenedLog Resume(string path, LogLock held, byte[] bytes)
    {
        SessionLog log = SessionLogReader.Read(bytes);
        ResumeVerdict verdict = ResumeTable.Decide(LogCondition.Of(log));
        string sentence = ResumeTable.Sentence(verdict, log.Damages.Count(damage => !damage.IsNormal));
        return ResumeTable.IsRefusal(verdict)
            ? new(null, sentence)
            : Open(path, held, FileMode.Append, LogPosition.After(log, bytes), log) with { Sentence = sentence };
    }

    private static OpenedLog Open(string path, LogLock held, FileMode mode, LogPosition position, SessionLog? log = null)
    {
        SessionLogWriter writer = new(new DiskLogFile(path, mode), position);
        return new(new(path, held, writer, log ?? new([], [])), "");
    }

    private static OpenedLog Held(string path, string machine, Func<LogLock, OpenedLog> open)
    {
        (LogLock? held, string? refusal) = LogLock.Take(path, machine);
        if (held is null)
        {
            return new(null, refusal!);
        }

        OpenedLog opened = new(null, "");
        try
        {
            return opened = open(held);
        }
        finally
        {
            if (!opened.IsOpen)
            {
                held.Dispose();
            }
        }
    }

    private static OpenedLog Guarded(Func<OpenedLog> open)
    {
        try
        {
            return open();
        }
        catch (Exception fault) when (FileFault.IsExpected(fault))
        {
            return new(null, StorageTexts.Unwritable(FileFault.Reason(fault)));
        }
    }
}
