namespace WarmupConsole.Sessions.Findings;

/// <summary>A pitch in one session.</summary>
/// <param name="Session">Name of the log.</param>
/// <param name="Start">Wall time of its beginning.</param>
/// <param name="Blamed">Marks put down to the pitch.</param>
/// <param name="Exposed">Times the part sang it.</param>
public readonly record struct SessionShare(string Session, DateTimeOffset Start, double Blamed, int Exposed);
