using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// The player's standard output, for frames alone. From then on whatever a native library prints there goes where its complaints
/// go: among the frames it would end the player.
/// </summary>
public static partial class FrameOutput
{
    private const int StandardOutput = 1;
    private const int StandardError = 2;

    /// <summary>Takes it; to be called once, before any library is loaded.</summary>
    public static Stream Take()
    {
        int own = OperatingSystem.IsWindows() ? -1 : dup(StandardOutput);
        if (own < 0)
        {
            return Console.OpenStandardOutput();
        }

        _ = dup2(StandardError, StandardOutput);
        return new FileStream(new SafeFileHandle(own, ownsHandle: true), FileAccess.Write, bufferSize: 0);
    }

    [LibraryImport("libc")]
    private static partial int dup(int descriptor);

    [LibraryImport("libc")]
    private static partial int dup2(int from, int to);
}
