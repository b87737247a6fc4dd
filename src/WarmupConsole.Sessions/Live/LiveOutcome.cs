namespace WarmupConsole.Sessions.Live;

/// <summary>What an input led to.</summary>
public sealed record LiveOutcome(LiveSession Session, IReadOnlyList<LiveEffect> Effects);
