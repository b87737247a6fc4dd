using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>
/// Waits in the kernel for a timer or a wake, and spins for the last 1.5 ms: on a busy machine a wake was late by up to about 1 ms in 999 of
/// 1000 cases, on a bad day by 2 ms (docs/performance.md). Ten chords a second cost 1.5 % of a core. Allocates nothing while it waits.
/// </summary>
public sealed unsafe class LinuxWaiter : IWaiter
{
    private const long SpinNanoseconds = 1_500_000;
    private const long NanosecondsPerSecond = 1_000_000_000;
    private readonly Lock _closing = new();
    private readonly IMonotonicClock _clock;
    private readonly int _timer;
    private readonly int _event;
    private bool _woken;
    private bool _closed;

    private LinuxWaiter(IMonotonicClock clock, int timer, int wakes) => (_clock, _timer, _event) = (clock, timer, wakes);

    public Moment Now => _clock.Now;

    /// <summary>Null where there is no such timer: on other systems, or when no descriptor is left.</summary>
    public static LinuxWaiter? TryCreate(IMonotonicClock clock)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        LinuxWaiter waiter = new(
            clock,
            LinuxNative.timerfd_create(LinuxNative.ClockMonotonic, LinuxNative.NonBlockingAndNotInherited),
            LinuxNative.eventfd(0, LinuxNative.NonBlockingAndNotInherited));
        if (waiter._timer >= 0 && waiter._event >= 0)
        {
            return waiter;
        }

        waiter.Dispose();
        return null;
    }

    public bool WaitUntil(Moment? due)
    {
        // Around again after every wait: a wake may raise the descriptor after its flag was already taken.
        while (!Interlocked.Exchange(ref _woken, false))
        {
            if (due is not { } moment)
            {
                Poll(descriptors: 1);
            }
            else if (Now >= moment)
            {
                return true;
            }
            else
            {
                WaitShortOf(moment.Nanoseconds - Now.Nanoseconds - SpinNanoseconds);
            }
        }

        return false;
    }

    public void Wake()
    {
        Volatile.Write(ref _woken, true);
        lock (_closing)
        {
            if (!_closed)
            {
                ulong one = 1;
                _ = LinuxNative.write(_event, &one, sizeof(ulong));
            }
        }
    }

    public void Dispose()
    {
        lock (_closing) // a late wake must not write to a descriptor that means something else by then
        {
            if (!_closed)
            {
                _closed = true;
                _ = LinuxNative.close(_timer);
                _ = LinuxNative.close(_event);
            }
        }
    }

    private void WaitShortOf(long nanoseconds)
    {
        if (nanoseconds <= 0)
        {
            Thread.SpinWait(10);
            return;
        }

        (long seconds, long rest) = Math.DivRem(nanoseconds, NanosecondsPerSecond);
        LinuxNative.TimerSetting setting = new() { Seconds = seconds, Nanoseconds = rest };
        _ = LinuxNative.timerfd_settime(_timer, 0, &setting, null);
        Poll(descriptors: 2);
    }

    private void Poll(uint descriptors)
    {
        LinuxNative.PollEntry* entries = stackalloc LinuxNative.PollEntry[2];
        entries[0] = new(_event, LinuxNative.PollIn);
        entries[1] = new(_timer, LinuxNative.PollIn);
        _ = LinuxNative.poll(entries, descriptors, Timeout.Infinite);
        for (uint i = 0; i < descriptors; i++)
        {
            if (entries[i].Seen != 0)
            {
                ulong count;
                _ = LinuxNative.read(entries[i].Descriptor, &count, sizeof(ulong));
            }
        }
    }
}
