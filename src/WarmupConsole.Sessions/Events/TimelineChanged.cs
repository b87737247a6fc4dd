namespace WarmupConsole.Sessions.Events;

/// <summary>Beats mean these moments from now on.</summary>
public sealed record TimelineChanged(int MilliBpm, long BeatTicks, long Nanoseconds) : SessionEvent;
