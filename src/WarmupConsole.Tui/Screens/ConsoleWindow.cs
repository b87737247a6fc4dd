using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>The whole window: takes keys, shows what the presenter draws.</summary>
public sealed class ConsoleWindow : RowsWindow
{
    private static readonly TimeSpan Tick = TimeSpan.FromMilliseconds(30);

    private readonly ILiveConsole _console;
    private readonly ScreenControl _control;
    private object? _ticks;
    private int _refreshAsked;
    private ScreenStamp? _shown;

    public ConsoleWindow(ILiveConsole console)
        : this(console, Theme.For(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
    }

    public ConsoleWindow(ILiveConsole console, Theme theme)
        : base(theme)
    {
        (_console, _control) = (console, new(console));
        IsRunningChanged += (_, running) => Started(running.Value);
    }

    /// <summary>Every key ends here, so that no binding from elsewhere (a configuration file in the folder, say) can act.</summary>
    protected override bool OnKeyDown(Key key)
    {
        _control.Press(key);
        if (_control.Leaves)
        {
            Quit();
        }
        else
        {
            Refresh();
        }

        return true;
    }

    private void Started(bool running)
    {
        if (App is not { } app)
        {
            return;
        }

        if (running)
        {
            app.Keyboard.KeyBindings.Clear();
            app.Paste += OnPaste;
            app.ScreenChanged += OnScreenChanged;
            _console.Changed += AskRefresh;
            _ticks = app.AddTimeout(Tick, () => Refresh());
            Refresh();
        }
        else
        {
            app.Paste -= OnPaste;
            app.ScreenChanged -= OnScreenChanged;
            _console.Changed -= AskRefresh;
            app.RemoveTimeout(_ticks!);
        }
    }

    private void OnPaste(object? sender, PasteEventArgs paste)
    {
        _control.Paste(paste.Text);
        paste.Handled = true;
        Refresh();
    }

    private void OnScreenChanged(object? sender, EventArgs<Rectangle> screen) => Refresh();

    /// <summary>On any thread; many changes before the screen comes to it are one.</summary>
    private void AskRefresh()
    {
        if (Interlocked.Exchange(ref _refreshAsked, 1) == 0)
        {
            App?.Invoke(() =>
            {
                Volatile.Write(ref _refreshAsked, 0);
                Refresh();
            });
        }
    }

    /// <summary>Shows what has changed. Always true: the timer goes on.</summary>
    private bool Refresh()
    {
        if (App?.Screen.Size is { } size)
        {
            _control.Listen();
            ScreenModel model = _control.Model();
            ScreenStamp stamp = ScreenStamp.Of(model, size);
            if (stamp != _shown)
            {
                Show(ScreenPresenter.Draw(model with { Keys = _control.Hints }, size.Width, size.Height));
                _shown = stamp;
            }
        }

        return true;
    }
}
