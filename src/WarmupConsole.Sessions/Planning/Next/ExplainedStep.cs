namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Why a step is in a plan.</summary>
/// <param name="Title">Of its exercise.</param>
/// <param name="Value">What the plan would lose without it, in points.</param>
/// <param name="Parts">Its points one by one, the most first.</param>
/// <param name="Other">The best step that could stand in its place within the same minutes and limits, or empty when there is none.</param>
/// <param name="Loss">How many points the plan would have less with that one; below 0 when it would have more.</param>
public sealed record ExplainedStep(string Title, long Value, IReadOnlyList<(int Points, string Words)> Parts, string Other, long Loss);
