namespace WarmupConsole.Sessions.Choirs;

/// <summary>What differs in one part this evening.</summary>
/// <param name="PartId">Id of the part.</param>
/// <param name="Heads">How many are there, 0–999; null when nobody counted.</param>
/// <param name="HasColds">True when some have a cold.</param>
/// <param name="IsTired">True when the part is tired.</param>
public sealed record PartTonight(string PartId, int? Heads, bool HasColds, bool IsTired)
{
    private const int FewWhereNobodyCounted = 2;

    /// <summary>The most heads a part may have.</summary>
    public const int MostHeads = 999;

    /// <summary>True when half of the part or more is missing; where choir.yaml does not say how many they are, when two or fewer came.</summary>
    /// <param name="usual">How many sing it usually; 0 when not stated.</param>
    public bool IsThin(int usual) => Heads is { } heads && (usual > 0 ? 2 * heads <= usual : heads <= FewWhereNobodyCounted);
}
