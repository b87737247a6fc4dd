using System.Text;

namespace WarmupConsole.Tui.Presentation;

/// <summary>A screenful of cells, drawn before anything reaches the terminal.</summary>
public sealed class Canvas
{
    private readonly Cell[] _cells;

    public Canvas(int width, int height)
    {
        (Width, Height) = (Math.Max(0, width), Math.Max(0, height));
        _cells = new Cell[Width * Height];
        Array.Fill(_cells, Cell.Blank);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>The whole of it, to draw on.</summary>
    public Pane Whole => new(this, 0, 0, Width, Height);

    public ReadOnlySpan<Cell> Row(int row) => _cells.AsSpan(row * Width, Width);

    public void Set(int x, int y, Cell cell)
    {
        if (x >= 0 && x < Width && y >= 0 && y < Height)
        {
            _cells[(y * Width) + x] = cell;
        }
    }

    /// <summary>The screen as text, a line for each row, without blanks at the ends.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        for (int y = 0; y < Height; y++)
        {
            StringBuilder line = new();
            foreach (Cell cell in Row(y))
            {
                line.Append(cell.Text);
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }

        return text.ToString();
    }
}
