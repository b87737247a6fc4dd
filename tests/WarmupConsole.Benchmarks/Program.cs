using WarmupConsole.Benchmarks;

// One row of a Markdown table per benchmark; an argument keeps those whose name contains it. A new one is a row in a
// *Benchmarks class, named here.
DirectoryInfo folder = Directory.CreateTempSubdirectory("warmup-benchmarks-");
try
{
    IEnumerable<Benchmark> all =
    [
        .. TimelineBenchmarks.All,
        .. MusicBenchmarks.All,
        .. SoundBenchmarks.All,
        .. PlanningBenchmarks.All,
        .. RunningBenchmarks.All,
        .. RunningBenchmarks.LogIn(folder.FullName),
        .. SeasonBenchmarks.In(folder.FullName),
    ];
    string wanted = args.FirstOrDefault() ?? "";
    Console.WriteLine("| work | median | 99 % | worst |");
    Console.WriteLine("|---|---|---|---|");
    foreach (Benchmark benchmark in all.Where(b => b.Name.Contains(wanted, StringComparison.OrdinalIgnoreCase)))
    {
        Figures figures = benchmark.Run();
        Console.WriteLine($"| {benchmark.Name} | {Figures.Text(figures.Median)} | {Figures.Text(figures.P99)} | {Figures.Text(figures.Most)} |");
    }
}
finally
{
    folder.Delete(recursive: true);
}
