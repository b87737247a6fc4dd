namespace WarmupConsole.Sessions.Planning;

/// <summary>All that the check of a plan found.</summary>
/// <param name="Open">What is to be thought about, errors first.</param>
/// <param name="Off">What would be remarked if the plan did not switch its rule off.</param>
public sealed record PlanRemarks(IReadOnlyList<PlanRemark> Open, IReadOnlyList<PlanRemark> Off);
