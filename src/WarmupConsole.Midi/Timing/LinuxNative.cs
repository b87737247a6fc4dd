using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Timing;

/// <summary>The part of Linux's C library that waiting and scheduling need, on 64-bit machines.</summary>
internal static unsafe partial class LinuxNative
{
    internal const int ClockMonotonic = 1;
    internal const int NonBlockingAndNotInherited = 0x80800;
    internal const short PollIn = 1;
    internal const int SchedFifo = 1;

    [LibraryImport("libc")]
    internal static partial int timerfd_create(int clock, int flags);

    [LibraryImport("libc")]
    internal static partial int timerfd_settime(int timer, int flags, TimerSetting* setting, TimerSetting* former);

    [LibraryImport("libc")]
    internal static partial int eventfd(uint count, int flags);

    [LibraryImport("libc")]
    internal static partial int poll(PollEntry* entries, nuint count, int milliseconds);

    [LibraryImport("libc")]
    internal static partial nint read(int descriptor, void* bytes, nuint count);

    [LibraryImport("libc")]
    internal static partial nint write(int descriptor, void* bytes, nuint count);

    [LibraryImport("libc")]
    internal static partial int close(int descriptor);

    [LibraryImport("libc")]
    internal static partial int sched_setscheduler(int thread, int policy, int* priority);

    /// <summary>struct itimerspec: an interval, unused here, and the time to the first expiry.</summary>
    internal struct TimerSetting
    {
        internal long IntervalSeconds;
        internal long IntervalNanoseconds;
        internal long Seconds;
        internal long Nanoseconds;
    }

    /// <summary>struct pollfd.</summary>
    internal struct PollEntry(int descriptor, short wanted)
    {
        internal readonly int Descriptor = descriptor;
        internal readonly short Wanted = wanted;
        internal readonly short Seen = 0;
    }
}
