namespace WarmupConsole.Sessions.Events;

/// <summary>From here on the console follows what is played, silent, or leads again.</summary>
public sealed record FollowChanged(bool Follows) : SessionEvent;
