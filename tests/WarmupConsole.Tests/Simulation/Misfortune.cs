namespace WarmupConsole.Tests.Simulation;

/// <summary>What can go wrong around a run.</summary>
internal enum Misfortune
{
    CablePulled,
    PianoSwitchedOff,
    PianoBack,
    WallForwards,
    WallBackwards,
    Suspended,
    HostBusy,
    PlayerLate,
    PlayerDies,
    PlayerKilled,
    DiskFull,
    WritesTorn,
    FlushFails,
    DiskSlow,
    DiskGood,
    ConsoleKilled,
    PowerCut,
}
