namespace WarmupConsole.Sessions.Events;

/// <summary>From the next key of this step on the piano plays this while the choir sings: a style as plans name it ("bass-and-chord").</summary>
public sealed record AccompanimentChanged(int Step, string Style) : SessionEvent;
