namespace WarmupConsole.Tui.Presentation;

/// <summary>
/// Draws large letters. At scale s a square of the font is s columns wide and s half rows high, which looks square,
/// as a cell is about twice as high as wide.
/// </summary>
public static class BlockLetters
{
    private const int LargestScale = 12;

    public static int Columns(string text, int scale) =>
        Math.Max(0, (Glyphs(text).Sum(glyph => glyph[0].Length + 1) - 1) * scale);

    public static int Rows(int scale) => ((BlockFont.Rows * scale) + 1) / 2;

    /// <summary>The largest scale at which the text fits, or 0.</summary>
    public static int ScaleFor(string text, int columns, int rows)
    {
        int scale = LargestScale;
        while (scale > 0 && (Columns(text, scale) > columns || Rows(scale) > rows))
        {
            scale--;
        }

        return scale;
    }

    /// <summary>True when every letter has a large form.</summary>
    public static bool CanDraw(string text) => text.All(letter => BlockFont.Find(letter) is not null);

    /// <summary>Draws as large as the pane allows, as plain text if it allows nothing; returns the rows used.</summary>
    public static int Draw(Pane pane, string text, Ink ink)
    {
        int scale = ScaleFor(text, pane.Width, pane.Height);
        if (scale == 0)
        {
            pane.WriteFit(0, 0, text, ink);
            return Math.Min(1, pane.Height);
        }

        int x = 0;
        foreach (string[] glyph in Glyphs(text))
        {
            DrawGlyph(pane.Sub(x, 0, glyph[0].Length * scale, pane.Height), glyph, scale, ink);
            x += (glyph[0].Length + 1) * scale;
        }

        return Rows(scale);
    }

    private static void DrawGlyph(Pane pane, string[] glyph, int scale, Ink ink)
    {
        for (int row = 0; row < Rows(scale); row++)
        {
            for (int column = 0; column < pane.Width; column++)
            {
                bool upper = IsLit(glyph, column / scale, 2 * row / scale);
                bool lower = IsLit(glyph, column / scale, ((2 * row) + 1) / scale);
                if (upper || lower)
                {
                    pane.Write(column, row, HalfBlock(upper, lower), ink);
                }
            }
        }
    }

    private static string HalfBlock(bool upper, bool lower) => (upper, lower) switch
    {
        (true, true) => "█",
        (true, false) => "▀",
        _ => "▄",
    };

    private static bool IsLit(string[] glyph, int x, int y) => y < BlockFont.Rows && glyph[y][x] == '#';

    private static IEnumerable<string[]> Glyphs(string text) => text.Select(BlockFont.Find).OfType<string[]>();
}
