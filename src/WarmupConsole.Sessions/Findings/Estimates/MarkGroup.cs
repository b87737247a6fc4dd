namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Marks that say the same.</summary>
/// <param name="Share">What each of them counts: 1 when the part was named, else one share among all who sang.</param>
/// <param name="Count">How many they are.</param>
/// <param name="Cells">What each of them may mean; never empty.</param>
internal readonly record struct MarkGroup(double Share, int Count, MarkedCell[] Cells)
{
    /// <summary>What they count together.</summary>
    internal double Weight => Share * Count;
}
