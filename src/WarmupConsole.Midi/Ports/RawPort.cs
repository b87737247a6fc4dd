using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Ports;

/// <summary>
/// Writes bytes to a device file of the kernel (or a pipe with a name), with no library at all. It never waits: a device that
/// takes nothing more is a lost one.
/// </summary>
public sealed partial class RawPort : IMidiPort
{
    private const int WriteOnly = 1;
    private const int NonBlocking = 0x800; // Linux
    private const int CloseOnExec = 0x80000;
    private int _descriptor;

    private RawPort(int descriptor, string path) => (_descriptor, Name) = (descriptor, path);

    public string Name { get; }

    /// <summary>Null when it cannot be opened: not there, held by another program, not allowed.</summary>
    public static RawPort? Open(string path, out int error)
    {
        int descriptor = open(path, WriteOnly | NonBlocking | CloseOnExec);
        error = descriptor < 0 ? Marshal.GetLastPInvokeError() : 0;
        return descriptor < 0 ? null : new(descriptor, path);
    }

    // A message cut short counts as lost: what follows it could not be understood. SIGPIPE is ignored by the runtime.
    public bool Send(ReadOnlySpan<byte> message) => _descriptor >= 0 && write(_descriptor, message, message.Length) == message.Length;

    public string? Close()
    {
        if (_descriptor >= 0)
        {
            _ = close(_descriptor);
            _descriptor = -1;
        }

        return null;
    }

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint write(int descriptor, ReadOnlySpan<byte> bytes, nint count);

    [LibraryImport("libc")]
    private static partial int close(int descriptor);
}
