namespace WarmupConsole.Tui.Screens;

/// <summary>What a prompt asks for.</summary>
public enum PromptKind
{
    Key,
    Parts,
    Octave,

    /// <summary>What the piano plays while the choir sings.</summary>
    Piano,
    InsertNext,
    InsertNow,

    /// <summary>What differs this evening.</summary>
    Tonight,

    /// <summary>A mark of the rehearsal: piece, bars, what was heard.</summary>
    Rehearsal,

    /// <summary>What the next control that is pressed is to do.</summary>
    Pedal,
}
