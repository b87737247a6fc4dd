namespace WarmupConsole.Tui.Presentation;

/// <summary>One card of the tour, in the place of the first picture.</summary>
internal static class TourPage
{
    private const int WidestText = 72;

    internal static void Draw(Pane body, int card)
    {
        (string title, string text) = TourTexts.Cards[card];
        int blank = body.Height >= 16 ? 1 : 0;
        body.WriteFit(0, blank, $"{TourTexts.Title}, {ScreenTexts.Of(TourTexts.Place, card + 1, TourTexts.Cards.Count)}");
        int row = (3 * blank) + 1;
        Pane word = body.Sub(0, row, body.Width, Math.Max(1, body.Height / 3));
        string large = title.ToUpperInvariant();
        row += BlockLetters.CanDraw(large) ? BlockLetters.Draw(word, large, Ink.Key) : Plain(word, title);
        row += 1 + blank;
        Block.DrawAll(body.From(row), Block.Paragraph(text, Math.Min(WidestText, body.Width), Math.Max(1, body.Height - row - 2), Ink.Strong));
        body.WriteFit(0, body.Height - 1, TourTexts.Keys);
    }

    private static int Plain(Pane pane, string title)
    {
        pane.WriteFit(0, 0, title, Ink.Key);
        return 1;
    }
}
