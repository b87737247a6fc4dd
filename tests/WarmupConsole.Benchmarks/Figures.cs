namespace WarmupConsole.Benchmarks;

/// <summary>Nanoseconds of one repetition.</summary>
internal readonly record struct Figures(double Median, double P99, double Most);
