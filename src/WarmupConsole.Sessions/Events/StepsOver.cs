namespace WarmupConsole.Sessions.Events;

/// <summary>In a run without a plan: the exercise is done and none is put in behind it yet.</summary>
public sealed record StepsOver(int Step) : SessionEvent;
