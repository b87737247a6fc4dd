namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Where writing goes on in a log.</summary>
/// <param name="NextSequence">Number of the next record.</param>
/// <param name="Epoch">Counts the runs in the file, from 1.</param>
/// <param name="Before">What the file holds already.</param>
public sealed record LogPosition(long NextSequence, int Epoch, ReadOnlyMemory<byte> Before)
{
    /// <summary>A new file.</summary>
    public static LogPosition New { get; } = new(1, 1, ReadOnlyMemory<byte>.Empty);

    /// <summary>Behind what could be read of a log that has a start: the next number, in a new epoch.</summary>
    public static LogPosition After(SessionLog log, ReadOnlyMemory<byte> bytes) =>
        new(log.Records[^1].Sequence + 1, log.Records.Max(record => record.Epoch) + 1, bytes);
}
