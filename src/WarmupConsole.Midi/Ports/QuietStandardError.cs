using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Ports;

/// <summary>
/// While it lives, what native libraries print to standard error goes nowhere: JACK and ALSA complain at length about servers
/// and cards that are simply not there. Does nothing on Windows, where they do not.
/// </summary>
internal sealed partial class QuietStandardError : IDisposable
{
    private const int StandardError = 2;
    private const int WriteOnly = 1;
    private static readonly Lock OneAtATime = new();
    private readonly int _saved = -1;

    internal QuietStandardError()
    {
        OneAtATime.Enter();
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        _saved = dup(StandardError);
        int nowhere = open("/dev/null", WriteOnly);
        if (nowhere >= 0)
        {
            _ = dup2(nowhere, StandardError);
            _ = close(nowhere);
        }
    }

    public void Dispose()
    {
        if (_saved >= 0)
        {
            _ = dup2(_saved, StandardError);
            _ = close(_saved);
        }

        OneAtATime.Exit();
    }

    [LibraryImport("libc")]
    private static partial int dup(int descriptor);

    [LibraryImport("libc")]
    private static partial int dup2(int from, int to);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc")]
    private static partial int close(int descriptor);
}
