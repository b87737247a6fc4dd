using WarmupConsole.Benchmarks;

// One line per benchmark; an argument keeps those whose name contains it. A new one is a row in a *Benchmarks class, named here.
IEnumerable<Benchmark> all = [.. TimelineBenchmarks.All, .. LadderBenchmarks.All];
string wanted = args.FirstOrDefault() ?? "";
Console.WriteLine($"{"nanoseconds of one",-40} {"median",14} {"p99",14} {"most",14}");
foreach (Benchmark benchmark in all.Where(b => b.Name.Contains(wanted, StringComparison.OrdinalIgnoreCase)))
{
    Figures figures = benchmark.Run();
    Console.WriteLine(FormattableString.Invariant($"{benchmark.Name,-40} {figures.Median,14:N1} {figures.P99,14:N1} {figures.Most,14:N1}"));
}
