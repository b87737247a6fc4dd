using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>One line to the director: why a key did nothing, what was kept, what went wrong.</summary>
public sealed record Notice(string Text, bool IsTrouble, Moment At);
