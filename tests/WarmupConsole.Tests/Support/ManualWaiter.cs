using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Support;

/// <summary>A waiter whose time stands still until the test moves it.</summary>
internal sealed class ManualWaiter : IWaiter
{
    private readonly object _lock = new();
    private Moment _now;
    private bool _woken;

    public Moment Now
    {
        get
        {
            lock (_lock)
            {
                return _now;
            }
        }
    }

    public bool WaitUntil(Moment? due)
    {
        lock (_lock)
        {
            while (!_woken && !(due <= _now))
            {
                Monitor.Wait(_lock);
            }

            bool came = !_woken;
            _woken = false;
            return came;
        }
    }

    public void Wake()
    {
        lock (_lock)
        {
            _woken = true;
            Monitor.PulseAll(_lock);
        }
    }

    public void Dispose()
    {
    }

    internal void MoveTo(double seconds)
    {
        lock (_lock)
        {
            _now = new((long)(seconds * 1e9));
            Monitor.PulseAll(_lock);
        }
    }
}
