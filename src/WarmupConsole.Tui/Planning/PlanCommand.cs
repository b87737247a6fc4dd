namespace WarmupConsole.Tui.Planning;

/// <summary>What a key of the planning screen does.</summary>
public enum PlanCommand
{
    Previous,
    Next,
    Earlier,
    Later,
    TakeOut,
    OpenFields,
    Less,
    More,
    CloseFields,
    PutIn,
    Replace,
    Take,
    EraseLetter,
    Back,
    Hear,
    Silence,
    Undo,
    Write,
    Help,
    Leave,
}
