namespace WarmupConsole.Tui.Presentation;

/// <summary>Something that takes whole rows, one below the other.</summary>
internal readonly record struct Block(int Rows, Action<Pane> Draw)
{
    internal static Block Line(string text, Ink ink) => new(1, pane => pane.WriteFit(0, 0, text, ink));

    /// <summary>A text in at most so many rows; the last is shortened if there is more.</summary>
    internal static IEnumerable<Block> Paragraph(string text, int columns, int mostRows, Ink ink)
    {
        IReadOnlyList<string> lines = CellText.Wrap(text, columns);
        return lines.Count <= mostRows
            ? lines.Select(line => Line(line, ink))
            : [.. lines.Take(mostRows - 1).Select(line => Line(line, ink)), Line(string.Join(' ', lines.Skip(mostRows - 1)), ink)];
    }

    internal static void DrawAll(Pane pane, IEnumerable<Block> blocks)
    {
        int row = 0;
        foreach (Block block in blocks)
        {
            block.Draw(pane.Sub(0, row, pane.Width, block.Rows));
            row += block.Rows;
        }
    }
}
