namespace WarmupConsole.Storage.Decisions;

/// <summary>What the director decided about a finding: one line of decisions.jsonl.</summary>
/// <param name="On">The day.</param>
/// <param name="Finding">Id of the finding.</param>
/// <param name="IsDismissal">True when it is no longer to be told, false when it is again.</param>
/// <param name="Why">The reason, as typed; may be empty for what is told again.</param>
public sealed record Decision(DateOnly On, string Finding, bool IsDismissal, string Why);
