using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.App.Running;

/// <summary>Stands for a log that could not be opened: it refuses everything with that reason, so that its writer keeps it.</summary>
internal sealed class RefusedLogFile(string reason) : ILogFile
{
    public void Append(ReadOnlySpan<byte> bytes) => throw new IOException(reason);

    public void FlushToDisk() => throw new IOException(reason);

    public void Dispose()
    {
    }
}
