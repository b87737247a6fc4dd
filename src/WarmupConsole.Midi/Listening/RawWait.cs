using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Listening;

/// <summary>Waits in the system for a device to have something.</summary>
internal static class RawWait
{
    /// <summary>False when the device will not have anything, or cannot be waited for.</summary>
    internal static unsafe bool ForInput(int descriptor, TimeSpan most)
    {
        LinuxNative.PollEntry entry = new(descriptor, LinuxNative.PollIn);
        int ready = LinuxNative.poll(&entry, 1, (int)most.TotalMilliseconds);
        return ready == 0 || (ready > 0 && (entry.Seen & LinuxNative.PollIn) != 0);
    }
}
