namespace WarmupConsole.Sessions.Choirs;

/// <summary>A date to prepare for.</summary>
public sealed record Concert(DateOnly Date, string Title);
