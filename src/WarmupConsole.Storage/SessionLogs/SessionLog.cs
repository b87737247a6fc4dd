using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>All that could be read of a log, in order, and a report of the rest.</summary>
public sealed record SessionLog(IReadOnlyList<SessionRecord> Records, IReadOnlyList<LogDamage> Damages)
{
    /// <summary>The record of the start, or null when it is not whole.</summary>
    public RunStarted? Start => Records.Count > 0 ? Records[0].Event as RunStarted : null;

    /// <summary>The checksum that the first whole line ends in, as it stands there; 0 when there is none. A copy of a log has the same, whatever became of its end.</summary>
    public ulong FirstChecksum { get; init; }

    public bool IsFinished => Records.Any(record => record.Event is RunEnded);
}
