namespace WarmupConsole.Sessions.Events;

/// <summary>It ran late, and the director took the cut that was offered. Keys says how many keys of the step's ladder are left, from its first; 0 when the step is left out.</summary>
/// <param name="Step">Number of the step.</param>
/// <param name="Exercise">Id of its exercise.</param>
/// <param name="Keys">Keys that are left.</param>
/// <param name="Seconds">What it saves, as reckoned then.</param>
public sealed record CutTaken(int Step, string Exercise, int Keys, int Seconds) : SessionEvent;
