namespace WarmupConsole.Sessions.Events;

/// <summary>A mark was taken back.</summary>
public sealed record MarkUndone(int Id) : SessionEvent;
