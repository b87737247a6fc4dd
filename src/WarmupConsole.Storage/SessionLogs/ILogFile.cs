namespace WarmupConsole.Storage.SessionLogs;

/// <summary>The file under a log: added to at its end, and flushed to disk.</summary>
/// <remarks>Both throw <see cref="IOException"/> or <see cref="UnauthorizedAccessException"/> when the system refuses.</remarks>
public interface ILogFile : IDisposable
{
    void Append(ReadOnlySpan<byte> bytes);

    void FlushToDisk();
}
