namespace WarmupConsole.Tui.Keys;

/// <summary>What a key does besides the live actions.</summary>
public enum ScreenCommand
{
    KeepMark,
    EraseLetter,
    UndoMark,
    MoveMarkBack,
    Help,
    Leave,
}
