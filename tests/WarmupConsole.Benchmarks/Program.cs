using WarmupConsole.Benchmarks;

// One row of a Markdown table per benchmark; an argument keeps those whose name contains it. A new one is a row in a
// *Benchmarks class, named here.
if (args is ["--score-file", var path])
{
    File.WriteAllBytes(path, ScoreBenchmarks.Make(1_000_000));
    return;
}

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
        .. ScoreBenchmarks.All,
    ];
    string wanted = args.FirstOrDefault() ?? "";
    Console.WriteLine("| work | median | 99 % | worst |");
    Console.WriteLine("|---|---|---|---|");
    foreach (Benchmark benchmark in all.Where(b => b.Name.Contains(wanted, StringComparison.OrdinalIgnoreCase)))
    {
        Figures figures = benchmark.Run();
        Console.WriteLine($"| {benchmark.Name} | {Figures.Text(figures.Median)} | {Figures.Text(figures.P99)} | {Figures.Text(figures.Most)} |");
    }

    if ("score memory".Contains(wanted, StringComparison.OrdinalIgnoreCase) && wanted.Length > 0)
    {
        (double held, double taken) = ScoreBenchmarks.Memory(1);
        Console.WriteLine(FormattableString.Invariant($"score of 1 MB: {held:0.0} bytes held and {taken:0.0} taken for each byte of the file"));
    }
}
finally
{
    folder.Delete(recursive: true);
}
