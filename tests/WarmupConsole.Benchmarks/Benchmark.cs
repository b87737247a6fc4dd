using System.Diagnostics;

namespace WarmupConsole.Benchmarks;

/// <summary>
/// A piece of work and how often it is repeated in one sample, so that a sample is long against the clock's own grain.
/// The work returns something that depends on all of it: nothing can then be optimised away.
/// </summary>
internal sealed record Benchmark(string Name, int Repeats, Func<long> Work)
{
    private const int WarmUps = 50;

    /// <summary>The just-in-time compiler is done by then: what is shipped is compiled before it runs.</summary>
    private static readonly TimeSpan WarmUpTime = TimeSpan.FromSeconds(0.5);

    /// <summary>How often it is measured; fewer for what takes long.</summary>
    internal int Samples { get; init; } = 500;

    /// <summary>Nanoseconds of one repetition: median, 99th percentile and largest of the samples.</summary>
    internal Figures Run()
    {
        long sum = 0;
        long begin = Stopwatch.GetTimestamp();
        for (int i = 0; i < Math.Min(WarmUps, Samples / 5) || Stopwatch.GetElapsedTime(begin) < WarmUpTime; i++)
        {
            sum += Work();
        }

        double[] samples = new double[Samples];
        for (int i = 0; i < Samples; i++)
        {
            long start = Stopwatch.GetTimestamp();
            sum += Work();
            samples[i] = Stopwatch.GetElapsedTime(start).TotalNanoseconds / Repeats;
        }

        GC.KeepAlive(sum);
        Array.Sort(samples);
        return new(samples[Samples / 2], samples[Samples * 99 / 100], samples[^1]);
    }
}
