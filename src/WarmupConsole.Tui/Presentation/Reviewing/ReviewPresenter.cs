namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Turns the review into a screenful: head, names of the pages, one page, keys. Pure: equal models, places and sizes give equal cells.</summary>
public static class ReviewPresenter
{
    private const int KeysColumns = 96;

    /// <param name="model">What is shown.</param>
    /// <param name="view">Which page.</param>
    /// <param name="top">The first of its lines to be shown, from 0; beyond the end, as far as it goes.</param>
    /// <param name="size">Columns and rows.</param>
    public static Canvas Draw(ReviewModel model, ReviewView view, int top, (int Width, int Height) size)
    {
        ArgumentNullException.ThrowIfNull(model);
        Canvas canvas = new(size.Width, size.Height);
        Pane pane = canvas.Whole.Sub(1, 0, size.Width - 2, size.Height);
        pane.WriteFit(0, 0, Head(model, pane.Width), Ink.Key);
        int row = 1 + DrawNames(pane.From(1), view);
        ReviewPage page = ReviewPage.Of(model, view, pane.Width);
        row = DrawLines(pane, row, page.Head) + (pane.Height > 20 ? 1 : 0);
        int rows = Math.Max(0, size.Height - 1 - row);
        int first = Math.Clamp(top, 0, Math.Max(0, page.Lines.Count - rows));
        DrawLines(pane, row, [.. page.Lines.Skip(first).Take(rows)]);
        DrawFoot(pane, page.Lines.Count <= rows ? "" : ReviewTexts.Lines(first + 1, first + rows, page.Lines.Count));
        return canvas;
    }

    /// <summary>With the choir's name where there is room for it: which weeks are looked back on matters more.</summary>
    private static string Head(ReviewModel model, int columns)
    {
        string named = $"{model.Choir.Name}: {model.Head[..1].ToLowerInvariant()}{model.Head[1..]}";
        return CellText.Columns(named) <= columns ? named : model.Head;
    }

    /// <summary>How far a page can be moved up, in lines, and how many of its lines are seen at once.</summary>
    public static (int Most, int Rows) Room(ReviewModel model, ReviewView view, (int Width, int Height) size)
    {
        ArgumentNullException.ThrowIfNull(model);
        Pane pane = new Canvas(size.Width, size.Height).Whole.Sub(1, 0, size.Width - 2, size.Height);
        ReviewPage page = ReviewPage.Of(model, view, pane.Width);
        int rows = Math.Max(1, size.Height - 2 - DrawNames(pane, view) - page.Head.Count - (pane.Height > 20 ? 1 : 0));
        return (Math.Max(0, page.Lines.Count - rows), rows);
    }

    /// <summary>The names in as many rows as they need; the one that is shown stands in brackets. How many rows.</summary>
    private static int DrawNames(Pane pane, ReviewView view)
    {
        (int x, int row) = (0, 0);
        foreach ((int index, string name) in ReviewTexts.Views.Index())
        {
            bool isShown = index == (int)view;
            string key = index == (int)ReviewView.Help ? "?" : $"{index + 1}";
            string text = isShown ? $"[{key} {name}]" : $" {key} {name} ";
            (x, row) = x > 0 && x + text.Length > pane.Width ? (0, row + 1) : (x, row);
            x = pane.Write(x, row, text, isShown ? Ink.Live : Ink.Plain);
        }

        return row + 1;
    }

    private static int DrawLines(Pane pane, int row, IReadOnlyList<ReviewLine> lines)
    {
        foreach (ReviewLine line in lines)
        {
            pane.WriteFit(0, row++, line.Text, line.Ink);
        }

        return row;
    }

    private static void DrawFoot(Pane pane, string lines)
    {
        pane.WriteFit(0, pane.Height - 1, pane.Width < KeysColumns && lines.Length > 0 ? ReviewTexts.KeysShort : ReviewTexts.Keys, Ink.Strong);
        pane.WriteRight(pane.Height - 1, lines);
    }
}
