namespace WarmupConsole.Sessions.Events;

/// <summary>The order of the steps from here on, by their numbers; whatever is not named is not led.</summary>
public sealed record OrderChanged(IReadOnlyList<int> Steps, string Why) : SessionEvent;
