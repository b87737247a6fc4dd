using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tui.Presentation;

/// <summary>
/// The range board: a column for each part, pitch upwards. Light shade is what a part can sing at all, denser shade what it
/// sings with ease, the solid block what the present key asks of it (an outline when it rests), small letters the marks.
/// </summary>
internal static class BoardPanel
{
    private const int NarrowestLabel = 2;
    private const int WidestColumn = 12;

    // In fewer columns an ellipsis would cost more of the name than it explains.
    private const int EllipsisFrom = 5;

    internal static void Draw(Pane pane, ScreenModel model)
    {
        if (model.Shown is { } rung)
        {
            Draw(pane, rung.Parts, model.Notes, (column, scale, part) => BoardMarks.Draw(column, scale, model, part));
        }
    }

    /// <summary>The board of any parts, each with what is asked of it.</summary>
    internal static void Draw(Pane pane, IReadOnlyList<RungPart> parts, NoteNaming notes, Action<Pane, BoardScale, RungPart> marks)
    {
        if (pane.Height < 3)
        {
            return;
        }

        BoardScale scale = BoardScale.For(parts.Select(part => part.Part), pane.Height - 1);
        string[] labels = [.. Enumerable.Range(0, scale.Rows).Select(row => Label(scale, row, notes))];
        int axis = 1 + Math.Max(NarrowestLabel, labels.Max(CellText.Columns));
        int step = Math.Clamp((pane.Width - axis) / parts.Count, 1, WidestColumn);
        DrawAxis(pane, labels, axis, step * parts.Count);
        for (int index = 0; index < parts.Count; index++)
        {
            Pane column = pane.Sub(axis + (step * index), 0, step > 2 ? step - 1 : step, pane.Height);
            DrawPart(column, scale, parts[index]);
            marks(column, scale, parts[index]);
        }
    }

    /// <summary>The lines of the Cs, each with its name.</summary>
    private static void DrawAxis(Pane pane, string[] labels, int axis, int width)
    {
        foreach ((int row, string label) in labels.Index().Where(line => line.Item.Length > 0))
        {
            pane.Sub(axis, 0, width, pane.Height).Fill(row, "·", Ink.Faint);
            pane.Write(0, row, label, Ink.Faint);
        }
    }

    private static string Label(BoardScale scale, int row, NoteNaming notes) =>
        scale.CIn(row) is { } c && !(row > 0 && scale.CIn(row - 1) == c) ? notes.Write(new(Step.C, 0, (c / 12) - 1)) : "";

    private static void DrawPart(Pane column, BoardScale scale, RungPart part)
    {
        for (int row = 0; row < scale.Rows; row++)
        {
            if (Glyph(scale, row, part) is { } glyph)
            {
                column.Fill(row, glyph.Text, glyph.Ink);
            }
        }

        column.Write(0, scale.Rows, Name(part, column.Width), part.Sings ? Ink.Live : Ink.Faint);
    }

    private static Cell? Glyph(BoardScale scale, int row, RungPart part)
    {
        bool outline = scale.Meets(row, part.Span);
        if (outline && part.Sings)
        {
            return new(Block(scale with { Rows = 2 * scale.Rows }, 2 * row, part), Ink.Live);
        }

        return (scale.Meets(row, part.Part.Range.Comfortable), scale.Meets(row, part.Part.Range.Extreme)) switch
        {
            (true, _) => new(outline ? "┊" : "▒", Ink.Range),
            (false, true) => new(outline ? "┊" : "░", Ink.Range),
            _ => outline ? new("┊", Ink.Faint) : null,
        };
    }

    /// <summary>Half a row counts: a semitone up is then seen even on a small screen.</summary>
    private static string Block(BoardScale halves, int upper, RungPart part) => (halves.Meets(upper, part.Span), halves.Meets(upper + 1, part.Span)) switch
    {
        (true, false) => "▀",
        (false, true) => "▄",
        _ => "█",
    };

    private static string Name(RungPart part, int columns)
    {
        string name = part.Part.Name;
        return columns >= EllipsisFrom ? CellText.Fit(name, columns) : string.Concat(CellText.Split(name).Take(columns));
    }
}
