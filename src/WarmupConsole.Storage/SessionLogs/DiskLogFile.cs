namespace WarmupConsole.Storage.SessionLogs;

/// <summary>A log on disk.</summary>
internal sealed class DiskLogFile(string path, FileMode mode) : ILogFile
{
    // No buffer of our own: what was appended is the system's at once, and survives the end of this process.
    private readonly FileStream stream = new(path, mode, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);

    public void Append(ReadOnlySpan<byte> bytes) => stream.Write(bytes);

    public void FlushToDisk() => stream.Flush(flushToDisk: true);

    public void Dispose() => stream.Dispose();
}
