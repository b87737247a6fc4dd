namespace WarmupConsole.Sessions.Events;

/// <summary>From here on only these parts sing in this step; empty for everyone.</summary>
public sealed record PartsChosen(int Step, IReadOnlyList<string> Parts) : SessionEvent;
