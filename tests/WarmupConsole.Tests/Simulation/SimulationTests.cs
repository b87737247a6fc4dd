using System.Collections.Concurrent;

namespace WarmupConsole.Tests.Simulation;

/// <summary>
/// Thousands of evenings, each from its seed. WARMUP_SIMULATIONS says how many, WARMUP_SEED runs one alone;
/// docs/reliability.md tells more.
/// </summary>
public class SimulationTests
{
    private const int Usual = 300;

    [Fact]
    public void Whatever_is_pressed_and_whatever_fails_no_law_is_broken()
    {
        if (Number("WARMUP_SEED") is { } seed)
        {
            Simulation.Run(seed);
            return;
        }

        SimulationFigures all = RunAll(Number("WARMUP_SIMULATIONS") ?? Usual);
        TestContext.Current.TestOutputHelper?.WriteLine(all.ToString());
        Assert.True(all is { Inputs: > 0, Misfortunes: > 0, Notes: > 0, Resumed: > 0, Records: > 0 }, $"Too little happened: {all}");
    }

    [Fact]
    public void The_same_seed_gives_the_same_evening() => Assert.Equal(Simulation.Run(7), Simulation.Run(7));

    [Theory]
    [InlineData(Flaw.PianoMissesEnds, "Other notes sound than are held")]
    [InlineData(Flaw.DiskLies, "A confirmed mark is lost")]
    public void A_flaw_is_found_and_told_with_its_seed_and_the_last_events(Flaw flaw, string broken)
    {
        string[] found = [.. Enumerable.Range(0, 200).Select(seed => Record.Exception(() => Simulation.Run(seed, flaw))?.Message).OfType<string>()];
        Assert.Contains(found, message => message.Contains(broken, StringComparison.Ordinal));
        Assert.All(found, message =>
        {
            Assert.StartsWith("reproduce with WARMUP_SEED=", message, StringComparison.Ordinal);
            Assert.InRange(message.Split('\n').Length, 3, 30);
        });
    }

    private static SimulationFigures RunAll(int evenings)
    {
        ConcurrentBag<SimulationFigures> figures = [];
        ConcurrentQueue<string> broken = [];
        Parallel.For(0, evenings, (seed, loop) =>
        {
            try
            {
                figures.Add(Simulation.Run(seed));
            }
            catch (InvalidOperationException e)
            {
                broken.Enqueue(e.Message);
                loop.Stop();
            }
        });
        Assert.True(broken.IsEmpty, string.Join("\n\n", broken));
        return figures.Aggregate((a, b) => a + b);
    }

    private static int? Number(string variable) => int.TryParse(Environment.GetEnvironmentVariable(variable), out int number) ? number : null;
}
