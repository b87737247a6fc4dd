namespace WarmupConsole.Music.Ladders;

/// <summary>The keys of a step, in the order they are sung.</summary>
/// <param name="Rungs">In order; empty when no key fits under the limit.</param>
/// <param name="Reasons">One sentence for each end of the ladder, and for an empty one: why it stops where it stops.</param>
public sealed record KeyLadder(IReadOnlyList<Rung> Rungs, IReadOnlyList<string> Reasons);
