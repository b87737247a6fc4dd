using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.App.Running;

/// <summary>The thread that steps a <see cref="SessionHost"/>: at once when something is posted, else when something is due.</summary>
internal sealed class SessionLoop : IDisposable
{
    private readonly AutoResetEvent _wake = new(false); // not disposed: a late post may still set it
    private readonly SessionHost _host;
    private readonly IMonotonicClock _clock;
    private readonly Thread _thread;
    private volatile bool _ends;

    internal SessionLoop(SessionHost host, IMonotonicClock clock)
    {
        (_host, _clock) = (host, clock);
        _host.Posted += Wake;
        _thread = new(Run) { IsBackground = true, Name = "session" };
        _thread.Start();
    }

    /// <summary>Handles everything posted so far and ends.</summary>
    public void Dispose()
    {
        _host.Posted -= Wake;
        _ends = true;
        Wake();
        if (Thread.CurrentThread != _thread) // it may be this thread that fails and closes everything
        {
            _thread.Join();
        }
    }

    private void Wake() => _wake.Set();

    private void Run()
    {
        while (!_ends)
        {
            Moment? next = _host.Step();
            _wake.WaitOne(next is { } at ? Remaining(at) : Timeout.InfiniteTimeSpan);
        }

        _host.Step();
    }

    private TimeSpan Remaining(Moment at)
    {
        TimeSpan left = at - _clock.Now;
        return left <= TimeSpan.Zero ? TimeSpan.Zero : left + TimeSpan.FromMilliseconds(1);
    }
}
