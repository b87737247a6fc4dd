namespace WarmupConsole.Midi.Player;

/// <summary>The kinds of <see cref="PlayerReport"/>.</summary>
public enum PlayerReportKind
{
    /// <summary>A port is open (or, with none, it is said what takes its place).</summary>
    PortOpened,

    /// <summary>The port wanted could not be opened.</summary>
    PortFailed,

    /// <summary>The port was lost while playing.</summary>
    PortLost,

    /// <summary>The player did not take what was sent to it.</summary>
    NotesRefused,

    /// <summary>The player process ended without being asked.</summary>
    PlayerEnded,
}
