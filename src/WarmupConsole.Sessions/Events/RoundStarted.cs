namespace WarmupConsole.Sessions.Events;

/// <summary>A round of a body or breathing exercise began.</summary>
public sealed record RoundStarted(int Step, int Round) : SessionEvent;
