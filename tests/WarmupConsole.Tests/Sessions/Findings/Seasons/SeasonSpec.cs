namespace WarmupConsole.Tests.Sessions.Findings.Seasons;

/// <summary>What is hidden in a simulated season.</summary>
/// <param name="Seed">The same seed gives the same season.</param>
/// <param name="Sessions">Evenings, a week apart.</param>
/// <param name="Weaknesses">How many pitches are weak, in any parts.</param>
/// <param name="WeakRate">How often a weak pitch goes wrong when it is sung.</param>
internal sealed record SeasonSpec(int Seed, int Sessions, int Weaknesses, double WeakRate)
{
    /// <summary>How often anything else goes wrong, for each part in each rung.</summary>
    internal double BaseRate { get; init; } = 0.03;
}
