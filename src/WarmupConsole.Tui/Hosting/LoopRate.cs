using Terminal.Gui.App;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// How often the screen's loop turns: oftener while music runs, when keys and the beat are waited for; else it would only
/// cost power. Until the first picture stands it hardly rests, because the terminal's answers are waited for between its turns.
/// </summary>
internal sealed class LoopRate : IDisposable
{
    private const ushort AtStart = 500;
    private const ushort AtRest = 40;
    private const ushort InMusic = 120;
    private readonly ILiveConsole _console;

    internal LoopRate(ILiveConsole console)
    {
        _console = console;
        _console.Changed += Set;
    }

    public void Dispose() => _console.Changed -= Set;

    /// <summary>Before the first picture.</summary>
    internal static void Hurry() => Application.MaximumIterationsPerSecond = AtStart;

    /// <summary>When it stands; music may have begun before.</summary>
    internal static void Rest() => Application.MaximumIterationsPerSecond = Application.MaximumIterationsPerSecond == InMusic ? InMusic : AtRest;

    private void Set() => Application.MaximumIterationsPerSecond = _console.Session.NextWake is null ? AtRest : InMusic;
}
