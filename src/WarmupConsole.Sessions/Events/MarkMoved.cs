namespace WarmupConsole.Sessions.Events;

/// <summary>A mark was moved to another rung.</summary>
public sealed record MarkMoved(int Id, int Step, int Rung) : SessionEvent;
