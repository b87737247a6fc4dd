namespace WarmupConsole.Tui.Screens;

/// <summary>What a prompt asks for.</summary>
public enum PromptKind
{
    Key,
    Parts,
    Octave,
    InsertNext,
    InsertNow,

    /// <summary>What the next control that is pressed is to do.</summary>
    Pedal,
}
