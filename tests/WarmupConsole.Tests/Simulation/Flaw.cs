namespace WarmupConsole.Tests.Simulation;

/// <summary>A flaw put in on purpose, to see that the simulation finds it.</summary>
public enum Flaw
{
    None,
    PianoMissesEnds,
    DiskLies,
}
