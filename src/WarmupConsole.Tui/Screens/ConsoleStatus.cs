namespace WarmupConsole.Tui.Screens;

/// <summary>What the screen shows beside the session itself.</summary>
/// <param name="Port">What sounds: a port's name, or a sentence that nothing does and how to change that.</param>
/// <param name="Log">Where the session log is, or what is wrong with it.</param>
/// <param name="LogInTrouble">True when the log cannot be written.</param>
public sealed record ConsoleStatus(string Port, string Log, bool LogInTrouble)
{
    /// <summary>For the first picture; null until it is known.</summary>
    public StartCard? Start { get; init; }

    /// <summary>For the last one.</summary>
    public AheadCard Ahead { get; init; } = AheadCard.None;

    /// <summary>What pedals do, and what is listened to; empty when nothing is.</summary>
    public string Hands { get; init; } = "";
}
