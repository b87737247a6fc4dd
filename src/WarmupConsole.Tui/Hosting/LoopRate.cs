using Terminal.Gui.App;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// How often the screen's loop turns: oftener while music runs, when keys and the beat are waited for; else it would only
/// cost power.
/// </summary>
internal sealed class LoopRate : IDisposable
{
    private const ushort AtRest = 40;
    private const ushort InMusic = 120;
    private readonly ILiveConsole _console;

    internal LoopRate(ILiveConsole console)
    {
        _console = console;
        _console.Changed += Set;
        Set();
    }

    public void Dispose() => _console.Changed -= Set;

    private void Set() => Application.MaximumIterationsPerSecond = _console.Session.NextWake is null ? AtRest : InMusic;
}
