using System.Globalization;

namespace WarmupConsole.Benchmarks;

/// <summary>Nanoseconds of one repetition.</summary>
internal readonly record struct Figures(double Median, double P99, double Most)
{
    /// <summary>A figure with three digits or so, in the unit that suits it.</summary>
    internal static string Text(double nanoseconds) => nanoseconds switch
    {
        < 1_000 => string.Create(CultureInfo.InvariantCulture, $"{nanoseconds:0.#} ns"),
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{nanoseconds / 1_000:0.#} µs"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{nanoseconds / 1_000_000:0.##} ms"),
    };
}
