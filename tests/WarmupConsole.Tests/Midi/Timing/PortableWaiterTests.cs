using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Midi.Timing;

public class PortableWaiterTests
{
    [Fact]
    public void A_moment_that_has_passed_needs_no_wait()
    {
        using PortableWaiter waiter = new(new SystemMonotonicClock());
        Assert.True(waiter.WaitUntil(waiter.Now));
    }

    [Fact]
    public void It_never_returns_before_the_moment()
    {
        using PortableWaiter waiter = new(new SystemMonotonicClock());
        for (int microseconds = 0; microseconds < 4000; microseconds += 500)
        {
            Moment due = waiter.Now + TimeSpan.FromMicroseconds(microseconds);
            Assert.True(waiter.WaitUntil(due));
            Assert.True(waiter.Now >= due);
        }
    }

    [Fact]
    public void A_wake_is_kept_until_somebody_waits_and_serves_once()
    {
        using PortableWaiter waiter = new(new VirtualClock());
        waiter.Wake();
        waiter.Wake();

        Assert.False(waiter.WaitUntil(null));
        Assert.True(waiter.WaitUntil(new(0)));
    }

    [Fact]
    public void A_wake_ends_a_wait_without_end()
    {
        using PortableWaiter waiter = new(new VirtualClock());
        bool? came = null;
        Thread waiting = new(() => came = waiter.WaitUntil(new(long.MaxValue)));
        waiting.Start();
        waiter.Wake();

        Assert.True(waiting.Join(TimeSpan.FromSeconds(30)));
        Assert.False(came);
    }

    [Fact]
    public void The_virtual_clock_never_goes_back()
    {
        VirtualClock clock = new();
        clock.MoveTo(new(5));
        clock.MoveTo(new(3));
        Assert.Equal(new(5), clock.Now);
    }
}
