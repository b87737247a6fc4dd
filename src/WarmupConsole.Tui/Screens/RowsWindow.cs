using Terminal.Gui.Drawing;
using Terminal.Gui.Views;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>A whole window that shows a drawn screenful row by row, again only where it changed, and that no key of the library's own ends.</summary>
public abstract class RowsWindow : Runnable
{
    private readonly Theme _theme;
    private readonly List<RowView> _rows = [];
    private bool _mayStop;

    protected RowsWindow(Theme theme)
    {
        ArgumentNullException.ThrowIfNull(theme);
        _theme = theme;
        SetScheme(new Scheme(theme[Ink.Plain]));
    }

    /// <summary>Ends the run, whatever is open.</summary>
    public void Quit()
    {
        _mayStop = true;
        App?.RequestStop(this);
    }

    /// <summary>Only <see cref="Quit"/> ends the run.</summary>
    protected override bool OnIsRunningChanging(bool oldIsRunning, bool newIsRunning) =>
        (!newIsRunning && !_mayStop) || base.OnIsRunningChanging(oldIsRunning, newIsRunning);

    /// <summary>Shows a screenful.</summary>
    protected void Show(Canvas canvas)
    {
        ArgumentNullException.ThrowIfNull(canvas);
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
