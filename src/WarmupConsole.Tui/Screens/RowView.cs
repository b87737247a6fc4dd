using Terminal.Gui.ViewBase;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>
/// One row of the screen. It is sent again only when its cells changed, so a moving beat costs one row and not the screen
/// (the library sends every cell that is drawn, changed or not).
/// </summary>
internal sealed class RowView : View
{
    private readonly Theme _theme;
    private Cell[] _cells = [];

    internal RowView(Theme theme, int row)
    {
        _theme = theme;
        (Y, Width, Height, CanFocus) = (row, Dim.Fill(), 1, false);
    }

    internal void Show(ReadOnlySpan<Cell> cells)
    {
        if (!cells.SequenceEqual(_cells))
        {
            _cells = cells.ToArray();
            SetNeedsDraw();
        }
    }

    /// <summary>Every cell is drawn, blanks too, so there is nothing to clear.</summary>
    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (int start = 0; start < _cells.Length;)
        {
            int end = start;
            while (end < _cells.Length && _cells[end].Ink == _cells[start].Ink)
            {
                end++;
            }

            SetAttribute(_theme[_cells[start].Ink]);
            AddStr(start, 0, string.Concat(_cells[start..end].Select(cell => cell.Text)));
            start = end;
        }

        return true;
    }
}
