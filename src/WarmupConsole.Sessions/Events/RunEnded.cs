namespace WarmupConsole.Sessions.Events;

/// <summary>The warm-up came to its end ("finished") or was ended ("ended").</summary>
public sealed record RunEnded(string Why) : SessionEvent;
