using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A proposed plan.</summary>
/// <param name="Plan">The plan; every step says why it is there.</param>
/// <param name="Differences">Against the last plan, a line for each step.</param>
/// <param name="Unmet">What could not be met, in sentences; empty when everything was.</param>
/// <param name="Value">All its points.</param>
/// <param name="Season">Where its day lies.</param>
public sealed record NextPlanResult(Plan Plan, IReadOnlyList<string> Differences, IReadOnlyList<string> Unmet, long Value, SeasonTarget Season);
