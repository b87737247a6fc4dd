using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Keys;

/// <summary>One row of the key table. It means either a live action or a command of the screen.</summary>
/// <param name="Strokes">The keys, as <see cref="KeyStroke"/> names them.</param>
/// <param name="Label">As the footer and the help page write them.</param>
/// <param name="Brief">What it does, in a word or two, for the footer.</param>
/// <param name="Words">What it does, in a sentence.</param>
/// <param name="Use">When it works.</param>
/// <param name="Action">The live action, or null.</param>
/// <param name="Command">The command of the screen, or null.</param>
public sealed record KeyRow(
    IReadOnlyList<string> Strokes,
    string Label,
    string Brief,
    string Words,
    LineUse Use,
    LiveAction? Action,
    ScreenCommand? Command)
{
    public bool WorksWith(bool lineOpen) => Use == LineUse.Always || (Use == LineUse.WhenOpen) == lineOpen;
}
