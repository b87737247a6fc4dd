namespace WarmupConsole.Tui.Keys;

/// <summary>What a key does besides the live actions.</summary>
public enum ScreenCommand
{
    KeepMark,
    EraseLetter,

    /// <summary>Keeps the first suggestion as the mark.</summary>
    TakeSuggestion,
    Pin,

    /// <summary>Opens the mark line on the oldest pin without words.</summary>
    SayPin,
    UndoMark,
    MoveMarkBack,

    /// <summary>Asks for what differs this evening, before the start.</summary>
    Tonight,

    /// <summary>Opens the plan on the planning screen, before the start.</summary>
    EditPlan,

    /// <summary>Asks for a mark of the rehearsal, behind the warm-up.</summary>
    RehearsalMark,

    /// <summary>Asks what a pedal or a key of the piano is to do, and learns which one.</summary>
    LearnPedal,
    Help,
    Leave,
}
