namespace WarmupConsole.Sessions.Events;

/// <summary>A rung ended; whole when it was sung to its last beat.</summary>
public sealed record RungEnded(int Step, int Rung, bool Whole) : SessionEvent;
