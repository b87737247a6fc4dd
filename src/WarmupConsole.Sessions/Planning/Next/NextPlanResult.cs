namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A proposed plan.</summary>
/// <param name="Plan">The plan; each changed step says why in its <see cref="PlanStep.Because"/>.</param>
/// <param name="Differences">A line for each step against the last plan ("=" kept, "~" changed, "+" new, "-" left out), and under it, set in, why.</param>
/// <param name="Unmet">A sentence for everything that the plan could not answer; empty when all is answered.</param>
public sealed record NextPlanResult(Plan Plan, IReadOnlyList<string> Differences, IReadOnlyList<string> Unmet);
