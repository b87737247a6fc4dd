namespace WarmupConsole.Sessions.Events;

/// <summary>A fact for the session log. Flat: numbers, texts and lists of them, so that one line says it all.</summary>
public abstract record SessionEvent;
