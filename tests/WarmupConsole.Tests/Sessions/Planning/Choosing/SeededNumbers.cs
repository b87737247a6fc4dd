namespace WarmupConsole.Tests.Sessions.Planning.Choosing;

/// <summary>Numbers from a seed, the same on every machine and in every version of .NET (the generator is SplitMix64).</summary>
internal sealed class SeededNumbers(int seed)
{
    private ulong _state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);

    /// <summary>From the first to the last number, both included.</summary>
    internal int From(int first, int last) => first + (int)(Next() % (ulong)(last - first + 1));

    internal bool OnceIn(int times) => From(1, times) == 1;

    private ulong Next()
    {
        unchecked
        {
            ulong z = _state += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
