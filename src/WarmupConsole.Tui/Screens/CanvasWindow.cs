using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>A whole window that is drawn as a canvas: row by row, and again only where it changed. Every key goes to its control.</summary>
public abstract class CanvasWindow : Runnable
{
    private static readonly TimeSpan Tick = TimeSpan.FromMilliseconds(30);

    private readonly Theme _theme;
    private readonly List<RowView> _rows = [];
    private object? _ticks;
    private int _refreshAsked;
    private bool _stands;
    private bool _mayStop;

    protected CanvasWindow(Theme theme)
    {
        ArgumentNullException.ThrowIfNull(theme);
        _theme = theme;
        SetScheme(new Scheme(theme[Ink.Plain]));
        IsRunningChanged += (_, running) => Started(running.Value);
    }

    /// <summary>Once, on the screen's thread, when the first picture was sent.</summary>
    internal event Action? FirstPicture;

    /// <summary>True once the window is to be closed.</summary>
    protected abstract bool Leaves { get; }

    /// <summary>Ends the run, whatever is open.</summary>
    public void Quit()
    {
        _mayStop = true;
        App?.RequestStop(this);
    }

    /// <summary>What a key does.</summary>
    protected abstract void Press(Key key);

    protected abstract void Paste(string text);

    /// <summary>The screenful of this size, or null when it would be the one shown already.</summary>
    protected abstract Canvas? Draw(Size size);

    /// <summary>Hears, or no longer hears, of changes.</summary>
    protected abstract void Listen(bool begins);

    /// <summary>Only <see cref="Quit"/> ends the run: no key of the library's own does.</summary>
    protected override bool OnIsRunningChanging(bool oldIsRunning, bool newIsRunning) =>
        (!newIsRunning && !_mayStop) || base.OnIsRunningChanging(oldIsRunning, newIsRunning);

    /// <summary>The rows cover all of it.</summary>
    protected override bool OnClearingViewport() => true;

    /// <summary>The library draws only after the terminal has answered its questions, and sends what it drew before it comes to its timers.</summary>
    protected override void OnDrawComplete(DrawContext? context)
    {
        base.OnDrawComplete(context);
        if (!_stands && _rows.Count > 0)
        {
            _stands = true;
            App?.AddTimeout(TimeSpan.Zero, TellOfFirstPicture);
        }
    }

    /// <summary>Every key ends here, so that no binding from elsewhere (a configuration file in the folder, say) can act.</summary>
    protected override bool OnKeyDown(Key key)
    {
        Press(key);
        if (Leaves)
        {
            Quit();
        }
        else
        {
            Refresh();
        }

        return true;
    }

    /// <summary>On any thread; many changes before the screen comes to it are one.</summary>
    protected void AskRefresh()
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
            Listen(true);
            _ticks = app.AddTimeout(Tick, () => Refresh());
            Refresh();
        }
        else
        {
            app.Paste -= OnPaste;
            app.ScreenChanged -= OnScreenChanged;
            Listen(false);
            app.RemoveTimeout(_ticks!);
        }
    }

    /// <summary>Always false: the timer is not to come again.</summary>
    private bool TellOfFirstPicture()
    {
        FirstPicture?.Invoke();
        return false;
    }

    private void OnPaste(object? sender, PasteEventArgs paste)
    {
        Paste(paste.Text);
        paste.Handled = true;
        Refresh();
    }

    private void OnScreenChanged(object? sender, EventArgs<Rectangle> screen) => Refresh();

    /// <summary>Shows what has changed. Always true: the timer goes on.</summary>
    private bool Refresh()
    {
        if (App?.Screen.Size is { } size && Draw(size) is { } canvas)
        {
            Show(canvas);
        }

        return true;
    }

    private void Show(Canvas canvas)
    {
        while (_rows.Count > canvas.Height)
        {
            RowView row = _rows[^1];
            _rows.RemoveAt(_rows.Count - 1);
            Remove(row);
            row.Dispose();
        }

        while (_rows.Count < canvas.Height)
        {
            _rows.Add(new(_theme, _rows.Count));
            Add(_rows[^1]);
        }

        for (int row = 0; row < _rows.Count; row++)
        {
            _rows[row].Show(canvas.Row(row));
        }
    }
}
