using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Timing;

/// <summary>What every waiter must do, each on its own system.</summary>
public class WaiterTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public static TheoryData<string> Waiters => ["portable", "linux"];

    [Theory]
    [MemberData(nameof(Waiters))]
    public void A_moment_that_has_passed_needs_no_wait(string kind)
    {
        using IWaiter waiter = Create(kind, new SystemMonotonicClock());
        Assert.True(waiter.WaitUntil(waiter.Now));
    }

    [Theory]
    [MemberData(nameof(Waiters))]
    public void It_never_returns_before_the_moment(string kind)
    {
        using IWaiter waiter = Create(kind, new SystemMonotonicClock());
        for (int microseconds = 0; microseconds < 4000; microseconds += 500)
        {
            Moment due = waiter.Now + TimeSpan.FromMicroseconds(microseconds);
            Assert.True(waiter.WaitUntil(due));
            Assert.True(waiter.Now >= due);
        }
    }

    [Theory]
    [MemberData(nameof(Waiters))]
    public void A_wake_is_kept_until_somebody_waits_and_serves_once(string kind)
    {
        using IWaiter waiter = Create(kind, new VirtualClock());
        waiter.Wake();
        waiter.Wake();

        Assert.False(waiter.WaitUntil(null));
        Assert.True(waiter.WaitUntil(new(0)));
    }

    [Theory]
    [MemberData(nameof(Waiters))]
    public void A_wake_ends_a_wait_without_end(string kind)
    {
        Assert.False(WakenFrom(kind, null));
        Assert.False(WakenFrom(kind, new(long.MaxValue)));
    }

    [Theory]
    [MemberData(nameof(Waiters))]
    public void No_wake_is_lost_however_it_falls_between_waits(string kind)
    {
        using IWaiter waiter = Create(kind, new SystemMonotonicClock());
        int asked = 0;
        int answered = 0;
        Thread answering = new(() =>
        {
            while (Volatile.Read(ref answered) < 300)
            {
                waiter.WaitUntil(null);
                Volatile.Write(ref answered, Volatile.Read(ref asked));
            }
        });
        answering.Start();
        for (int i = 1; i <= 300; i++)
        {
            Volatile.Write(ref asked, i);
            waiter.Wake();
            Assert.True(SpinWait.SpinUntil(() => Volatile.Read(ref answered) >= i, Patience), $"Wake {i} was lost.");
        }

        Assert.True(answering.Join(Patience));
    }

    [Theory]
    [MemberData(nameof(Waiters))]
    public void Waiting_and_playing_allocate_nothing(string kind)
    {
        using IWaiter waiter = Create(kind, new SystemMonotonicClock());
        Assert.Equal(0, Allocated.Least(() =>
        {
            PlayerEngine engine = new(_ => new(new NullPort(), true, ""));
            Moment start = waiter.Now;
            engine.Handle(new Frame.SetTimeline(0, new(Tempo.FromBeatsPerMinute(300), Beats.Zero, start)), default);
            engine.Handle(new Frame.Notes(0, [.. Enumerable.Range(0, 40).Select(i => Note(40 + i, i / 40.0, 0.01))]), default);
            PlayOn(engine, waiter, start + TimeSpan.FromMilliseconds(50));
            Assert.NotNull(engine.NextDue);
            return () => PlayOn(engine, waiter, new(long.MaxValue));
        }));
    }

    [Fact]
    public void A_wake_after_the_end_does_no_harm()
    {
        IWaiter waiter = Create("linux", new SystemMonotonicClock());
        waiter.Dispose();
        waiter.Wake();
        waiter.Dispose();
    }

    [Fact]
    public void Linux_gets_the_finer_waiter()
    {
        using IWaiter waiter = WarmupConsole.Midi.Timing.Waiters.ForThisMachine(new SystemMonotonicClock());
        Assert.Equal(OperatingSystem.IsLinux(), waiter is LinuxWaiter);
    }

    [Fact]
    public void The_virtual_clock_never_goes_back()
    {
        VirtualClock clock = new();
        clock.MoveTo(new(5));
        clock.MoveTo(new(3));
        Assert.Equal(new(5), clock.Now);
    }

    private static bool? WakenFrom(string kind, Moment? due)
    {
        using IWaiter waiter = Create(kind, new VirtualClock());
        bool? came = null;
        Thread waiting = new(() => came = waiter.WaitUntil(due));
        waiting.Start();
        waiter.Wake();
        Assert.True(waiting.Join(Patience));
        return came;
    }

    private static void PlayOn(PlayerEngine engine, IWaiter waiter, Moment until)
    {
        while (engine.NextDue is { } due && due < until)
        {
            waiter.WaitUntil(due);
            engine.RunDue(waiter.Now);
        }
    }

    private static IWaiter Create(string kind, IMonotonicClock clock)
    {
        if (kind == "portable")
        {
            return new PortableWaiter(clock);
        }

        Assert.SkipUnless(OperatingSystem.IsLinux(), "The kernel's timers and events are Linux's.");
        return LinuxWaiter.TryCreate(clock)!;
    }
}
