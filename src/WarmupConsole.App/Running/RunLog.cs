using WarmupConsole.Midi.Timing;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.App.Running;

/// <summary>
/// The session log of one run. It begins with the first thing that happens, so that a look at the console leaves no log behind.
/// When its file cannot be opened the run goes on, and everything is kept here to be saved elsewhere.
/// </summary>
internal sealed class RunLog : IDisposable
{
    private readonly SessionLogFile? _file;
    private readonly SessionLogWriter _writer;
    private readonly RunStarted? _start;
    private readonly TimeProvider _wall;
    private readonly IMonotonicClock _clock;
    private int _hasBegun;
    private int _isDisposed;

    /// <param name="opened">The log on disk, or why there is none.</param>
    /// <param name="start">The first record, or null when a run goes on in its log.</param>
    /// <param name="wall">Stamps the records.</param>
    /// <param name="clock">Measures them.</param>
    internal RunLog(OpenedLog opened, RunStarted? start, TimeProvider wall, IMonotonicClock clock)
        : this(opened.File?.Writer ?? new SessionLogWriter(new RefusedLogFile(opened.Sentence), LogPosition.New), start, wall, clock) =>
        _file = opened.File;

    /// <summary>The same on any writer: tests bring a file that fails.</summary>
    internal RunLog(SessionLogWriter writer, RunStarted? start, TimeProvider wall, IMonotonicClock clock)
    {
        (_writer, _start, _wall, _clock) = (writer, start, wall, clock);
        Thread = new(_writer, wall);
    }

    /// <summary>Writes on its own once started; tests drain it by hand.</summary>
    internal SessionLogThread Thread { get; }

    /// <summary>Where the log is, or null when it could not be opened.</summary>
    internal string? Path => _file?.Path;

    /// <summary>True once something was recorded.</summary>
    internal bool HasBegun => _hasBegun != 0;

    /// <summary>True when something was recorded that no disk has.</summary>
    internal bool IsUnsaved => _writer.HasUnflushed;

    internal void Record(SessionEvent fact)
    {
        if (Interlocked.Exchange(ref _hasBegun, 1) == 0 && _start is not null)
        {
            Thread.Post(_start, _wall.GetLocalNow(), _clock.Now);
        }

        Thread.Post(fact, _wall.GetLocalNow(), _clock.Now);
    }

    public void Dispose()
    {
        if (Interlocked.Exchange(ref _isDisposed, 1) != 0)
        {
            return;
        }

        Thread.Dispose();
        _file?.Dispose();
        if (_start is not null && _hasBegun == 0 && Path is { } path)
        {
            File.Delete(path); // made empty by this run, and still empty
        }
    }
}
