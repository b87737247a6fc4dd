namespace WarmupConsole.Sessions.Events;

/// <summary>From here on a part sings this step so many octaves away from its placement: −1, 1, or 0 again.</summary>
public sealed record OctaveChanged(int Step, string Part, int Octaves) : SessionEvent;
