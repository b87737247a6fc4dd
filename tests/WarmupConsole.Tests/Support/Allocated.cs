namespace WarmupConsole.Tests.Support;

/// <summary>What a piece of work allocates on this thread, in bytes.</summary>
internal static class Allocated
{
    private const int Tries = 5;

    /// <summary>
    /// The least of a few tries: when another test's rubbish is collected meanwhile, the runtime counts the rest of this thread's free block
    /// as allocated. Work that allocates does so every time.
    /// </summary>
    /// <param name="prepare">Gets everything ready and returns the work, once a try.</param>
    internal static long Least(Func<Action> prepare) => Enumerable.Range(0, Tries).Min(_ =>
    {
        Action work = prepare();
        long before = GC.GetAllocatedBytesForCurrentThread();
        work();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    });
}
