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

    /// <summary>Asks what a pedal or a key of the piano is to do, and learns which one.</summary>
    LearnPedal,
    Help,
    Leave,
}
