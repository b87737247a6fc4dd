namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>What the search chose.</summary>
/// <param name="Choices">Indices into <see cref="PlanProblem.Choices"/>, in the order of the plan.</param>
/// <param name="Value">Of them together.</param>
/// <param name="IsWhole">False when nothing was found that keeps every limit; then it is the nearest plan.</param>
public sealed record ChosenPlan(IReadOnlyList<int> Choices, long Value, bool IsWhole)
{
    /// <summary>One that keeps every limit before one that does not, then the one that is worth more.</summary>
    internal bool IsBetterThan(ChosenPlan other) => (IsWhole, Value).CompareTo((other.IsWhole, other.Value)) > 0;
}
