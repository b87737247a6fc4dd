namespace WarmupConsole.Midi.Timing;

/// <summary>The best way to wait, and to be let run in time, that a machine allows.</summary>
public static class Waiters
{
    // Above the threads of the machine's interrupts (50 as a rule), below an audio server's (80 as a rule).
    private const int Priority = 70;

    public static IWaiter ForThisMachine(IMonotonicClock clock) => LinuxWaiter.TryCreate(clock) ?? (IWaiter)new PortableWaiter(clock);

    /// <summary>
    /// Asks that this thread, and those it starts from now on, run before everything ordinary (SCHED_FIFO on Linux).
    /// </summary>
    /// <returns>False where that is not allowed or not known; everything works all the same, a little less punctually on a busy machine.</returns>
    public static unsafe bool TryPrecede()
    {
        int priority = Priority;
        return OperatingSystem.IsLinux() && LinuxNative.sched_setscheduler(0, LinuxNative.SchedFifo, &priority) == 0;
    }
}
