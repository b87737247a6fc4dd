namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>A rung that a mark may mean.</summary>
/// <param name="Rung">Index among the rungs of the session.</param>
/// <param name="Weight">How likely it is meant before anything else is known; above 0, and 1 in all for a mark.</param>
public readonly record struct RungWeight(int Rung, double Weight);
