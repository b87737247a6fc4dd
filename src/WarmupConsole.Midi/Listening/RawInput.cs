using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Listening;

/// <summary>Reads a device file of the kernel (or a pipe with a name), with no library at all. It never waits.</summary>
public sealed partial class RawInput : IMidiInput
{
    private const int NonBlocking = 0x800; // Linux; reading only is 0
    private const int CloseOnExec = 0x80000;
    private const int NoSuchDevice = 19;
    private const int BrokenDevice = 5;
    private int _descriptor;
    private bool _isGone;

    private RawInput(int descriptor, string path) => (_descriptor, Name) = (descriptor, path);

    public string Name { get; }

    /// <summary>Null when it cannot be opened: not there, held by another program, not allowed.</summary>
    public static RawInput? Open(string path)
    {
        int descriptor = open(path, NonBlocking | CloseOnExec);
        return descriptor < 0 ? null : new(descriptor, path);
    }

    public bool IsThere => !_isGone && File.Exists(Name);

    public int Take(Span<byte> bytes)
    {
        int taken = _descriptor < 0 ? 0 : (int)read(_descriptor, bytes, bytes.Length);
        _isGone |= taken < 0 && Marshal.GetLastPInvokeError() is NoSuchDevice or BrokenDevice;
        return Math.Max(0, taken);
    }

    /// <summary>A pipe without a writer is always ready and never has anything: that is no reason to come back at once.</summary>
    public void Await(TimeSpan most)
    {
        if (_descriptor < 0 || !RawWait.ForInput(_descriptor, most))
        {
            ShortWait.Pass();
        }
    }

    public void Close()
    {
        if (_descriptor >= 0)
        {
            _ = close(_descriptor);
            _descriptor = -1;
        }
    }

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial nint read(int descriptor, Span<byte> bytes, nint count);

    [LibraryImport("libc")]
    private static partial int close(int descriptor);
}
