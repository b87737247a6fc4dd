namespace WarmupConsole.Tui.Presentation;

/// <summary>A rectangle of a canvas. What is drawn outside of it is cut off, so panels cannot spoil each other.</summary>
public readonly record struct Pane(Canvas Canvas, int X, int Y, int Width, int Height)
{
    public Pane Sub(int x, int y, int width, int height)
    {
        int left = Math.Clamp(x, 0, Math.Max(0, Width));
        int top = Math.Clamp(y, 0, Math.Max(0, Height));
        return new(Canvas, X + left, Y + top, Math.Clamp(width, 0, Width - left), Math.Clamp(height, 0, Height - top));
    }

    /// <summary>All rows from one on.</summary>
    public Pane From(int row) => Sub(0, row, Width, Height - row);

    /// <summary>Writes one line; returns the column after it.</summary>
    public int Write(int x, int y, string text, Ink ink = Ink.Plain)
    {
        foreach (string element in CellText.Split(text))
        {
            int columns = CellText.ColumnsOf(element);
            Put(x, y, element, ink);
            x += columns;
        }

        return x;
    }

    public void WriteRight(int y, string text, Ink ink = Ink.Plain) => Write(Width - CellText.Columns(text), y, text, ink);

    /// <summary>Writes one line, shortened to what is left of the row.</summary>
    public void WriteFit(int x, int y, string text, Ink ink = Ink.Plain) => Write(x, y, CellText.Fit(text, Width - x), ink);

    /// <summary>Fills a row, from edge to edge.</summary>
    public void Fill(int y, string glyph, Ink ink)
    {
        for (int x = 0; x < Width; x++)
        {
            Put(x, y, glyph, ink);
        }
    }

    private void Put(int x, int y, string element, Ink ink)
    {
        int columns = CellText.ColumnsOf(element);
        if (x < 0 || x + columns > Width || y < 0 || y >= Height)
        {
            return;
        }

        Canvas.Set(X + x, Y + y, new(element, ink));
        if (columns == 2)
        {
            Canvas.Set(X + x + 1, Y + y, new("", ink));
        }
    }
}
