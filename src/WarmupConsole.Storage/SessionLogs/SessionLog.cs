using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>All that could be read of a log, in order, and a report of the rest.</summary>
public sealed record SessionLog(IReadOnlyList<SessionRecord> Records, IReadOnlyList<LogDamage> Damages)
{
    /// <summary>The record of the start, or null when it is not whole.</summary>
    public RunStarted? Start => Records.Count > 0 ? Records[0].Event as RunStarted : null;

    public bool IsFinished => Records.Any(record => record.Event is RunEnded);
}
