namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What was chosen from the offers.</summary>
/// <param name="Steps">In the order of the plan.</param>
/// <param name="Value">Of them together.</param>
/// <param name="IsWhole">False when some limit could not be kept.</param>
internal sealed record Chosen(IReadOnlyList<Offer> Steps, long Value, bool IsWhole);
