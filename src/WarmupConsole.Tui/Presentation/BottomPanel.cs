namespace WarmupConsole.Tui.Presentation;

/// <summary>The foot of the screen: marks, the mark line, a word to the director, and the keys that work now.</summary>
internal static class BottomPanel
{
    internal static int Rows(ScreenModel model, int width, int height)
    {
        int notice = NoticePanel.Blocks(model, width, height).Count;
        return MarksPanel.OlderRows(model, height) + 1 + notice + (model.HelpOpen ? 1 : KeyRows(notice, width, height));
    }

    internal static void Draw(Pane pane, ScreenModel model, int height)
    {
        int older = MarksPanel.OlderRows(model, height);
        IReadOnlyList<Block> notice = NoticePanel.Blocks(model, pane.Width, height);
        MarksPanel.DrawOlder(pane.Sub(0, 0, pane.Width, older), model);
        MarksPanel.DrawLine(pane.Sub(0, older, pane.Width, 1), model);
        Block.DrawAll(pane.From(older + 1), notice);
        FooterPanel.Draw(pane.From(older + 1 + notice.Count), model);
    }

    /// <summary>A long notice borrows rows of the keys first, so that what is above does not jump; one row of keys stays.</summary>
    private static int KeyRows(int notice, int width, int height) => Math.Max(1, FooterPanel.Rows(width, height) - (notice - 1));
}
