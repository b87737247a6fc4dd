using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Timing;

/// <summary>Waits on an event in whole milliseconds and spins for the last one and a half: system timers are no finer.</summary>
public sealed class PortableWaiter(IMonotonicClock clock) : IWaiter
{
    private const double SpinMilliseconds = 1.5;
    private readonly AutoResetEvent _event = new(false);
    private bool _woken;

    public Moment Now => clock.Now;

    public bool WaitUntil(Moment? due)
    {
        // Around again after every wait: a wake may set the event after its flag was already taken.
        while (!Interlocked.Exchange(ref _woken, false))
        {
            if (due is not { } moment)
            {
                _event.WaitOne();
            }
            else if (Now >= moment)
            {
                return true;
            }
            else
            {
                WaitShortOf(moment - Now);
            }
        }

        return false;
    }

    public void Wake()
    {
        Volatile.Write(ref _woken, true);
        _event.Set();
    }

    public void Dispose() => _event.Dispose();

    private void WaitShortOf(TimeSpan left)
    {
        double milliseconds = Math.Floor(left.TotalMilliseconds - SpinMilliseconds);
        if (milliseconds >= 1)
        {
            _event.WaitOne((int)Math.Min(milliseconds, int.MaxValue));
        }
        else
        {
            Thread.SpinWait(20);
        }
    }
}
