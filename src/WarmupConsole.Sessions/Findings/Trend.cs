using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.Sessions.Findings;

/// <summary>The earlier sessions against the later ones.</summary>
/// <param name="Direction">What the comparison says.</param>
/// <param name="Earlier">The first half of the exposures.</param>
/// <param name="Later">The second half.</param>
/// <param name="FallChance">The probability that the share has fallen, 0–1.</param>
public sealed record Trend(TrendDirection Direction, Rate Earlier, Rate Later, double FallChance);
