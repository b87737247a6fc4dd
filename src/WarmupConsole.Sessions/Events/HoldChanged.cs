namespace WarmupConsole.Sessions.Events;

/// <summary>Music was held or goes on: "none", "paused" or "silenced".</summary>
public sealed record HoldChanged(string Hold) : SessionEvent;
