namespace WarmupConsole.Tui.Keys;

/// <summary>When a key drives: letters must be free to write while the mark line is open.</summary>
public enum LineUse
{
    Always,
    WhenClosed,
    WhenOpen,
}
