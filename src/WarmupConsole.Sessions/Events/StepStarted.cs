namespace WarmupConsole.Sessions.Events;

/// <summary>A step was introduced. Keys are its ladder as MIDI numbers of the tonics; empty for body and breathing.</summary>
public sealed record StepStarted(int Step, string Exercise, IReadOnlyList<int> Keys) : SessionEvent;
