namespace WarmupConsole.Sessions.Marks;

/// <summary>What a mark can say about a part: "flat", "strained", "good".</summary>
/// <param name="Id">The canonical id in logs.</param>
/// <param name="Words">As it is shown in a sentence: "short of breath".</param>
/// <param name="Spellings">What may be typed for it, besides id and words; lower-case.</param>
/// <param name="IsPraise">True when nothing needs work ("good", "easy").</param>
public sealed record MarkKind(string Id, string Words, IReadOnlyList<string> Spellings, bool IsPraise)
{
    /// <summary>True when it says that a voice had too much to do ("strained", "hoarse"): it is answered with less, never with more of the same.</summary>
    public bool IsEffort { get; init; }
}
