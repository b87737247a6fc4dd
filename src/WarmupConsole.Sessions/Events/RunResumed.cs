namespace WarmupConsole.Sessions.Events;

/// <summary>A run that was cut off goes on in the same file.</summary>
public sealed record RunResumed(int Step, int Rung) : SessionEvent;
