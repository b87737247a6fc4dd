namespace WarmupConsole.Sessions.Marks;

/// <summary>What a mark can say about a part: "flat", "strained", "good".</summary>
/// <param name="Id">The canonical id in logs.</param>
/// <param name="Words">As it is shown in a sentence: "short of breath".</param>
/// <param name="Spellings">What may be typed for it, besides id and words; lower-case.</param>
/// <param name="IsPraise">True when nothing needs work ("good", "easy").</param>
public sealed record MarkKind(string Id, string Words, IReadOnlyList<string> Spellings, bool IsPraise);
