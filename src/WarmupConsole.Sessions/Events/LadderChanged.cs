namespace WarmupConsole.Sessions.Events;

/// <summary>The rest of the ladder was re-made live. Keys are the whole ladder as MIDI numbers of the tonics.</summary>
public sealed record LadderChanged(int Step, int Rung, IReadOnlyList<int> Keys, string Why) : SessionEvent;
