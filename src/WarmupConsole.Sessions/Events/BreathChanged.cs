namespace WarmupConsole.Sessions.Events;

/// <summary>From here on the breath between two keys of this step lasts so many beats (1–8).</summary>
public sealed record BreathChanged(int Step, int Beats) : SessionEvent;
