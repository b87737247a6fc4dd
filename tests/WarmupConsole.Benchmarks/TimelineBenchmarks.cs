using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Benchmarks;

/// <summary>Beats to time and back: done for every note and for every picture of the screen.</summary>
internal static class TimelineBenchmarks
{
    private const int Repeats = 10_000;

    private static readonly Timeline Timeline = new(Tempo.FromBeatsPerMinute(88), Beats.Zero, new Moment(1_000_000_000));

    internal static IEnumerable<Benchmark> All =>
    [
        new("timeline: beat to time", Repeats, () => Sum(i => Timeline.TimeAt(new Beats(i * 7)).Nanoseconds)),
        new("timeline: time to beat", Repeats, () => Sum(i => Timeline.BeatAt(new Moment(i * 1_000_003L)).Ticks)),
    ];

    private static long Sum(Func<int, long> value)
    {
        long sum = 0;
        for (int i = 0; i < Repeats; i++)
        {
            sum += value(i);
        }

        return sum;
    }
}
