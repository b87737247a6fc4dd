using Terminal.Gui.ViewBase;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>
/// One row of the screen. Only what lies between the first and the last cell that changed is sent again, so a moving beat costs a few cells and
/// not the screen. The cells are put into the library's buffer here: its own way of adding text sends all of them anew and measures each several times.
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
        if (App?.Driver?.GetOutputBuffer() is { Contents: { } places } buffer && FrameToScreen().Y is var row && row < places.GetLength(0))
        {
            int columns = Math.Min(_cells.Length, places.GetLength(1));
            int first = 0;
            while (first < columns && IsThere(places[row, first], _cells[first]))
            {
                first++;
            }

            int end = columns;
            while (end > first && IsThere(places[row, end - 1], _cells[end - 1]))
            {
                end--;
            }

            for (int column = first; column < end; column++)
            {
                places[row, column] = new(_theme[_cells[column].Ink], IsDirty: true, _cells[column].Text);
            }

            buffer.DirtyLines[row] |= end > first;
        }

        return true;
    }

    private bool IsThere(Terminal.Gui.Drawing.Cell place, Cell cell) => place.Grapheme == cell.Text && place.Attribute == _theme[cell.Ink];
}
