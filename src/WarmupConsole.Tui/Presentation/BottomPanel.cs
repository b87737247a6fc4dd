namespace WarmupConsole.Tui.Presentation;

/// <summary>The foot of the screen: marks, the mark line, a word to the director, and the keys that work now.</summary>
internal static class BottomPanel
{
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(10);

    internal static int Rows(ScreenModel model, int width, int height) =>
        MarksPanel.OlderRows(model, height) + 2 + FooterPanel.Rows(width, height);

    internal static void Draw(Pane pane, ScreenModel model, int height)
    {
        int older = MarksPanel.OlderRows(model, height);
        MarksPanel.DrawOlder(pane.Sub(0, 0, pane.Width, older), model);
        MarksPanel.DrawLine(pane.Sub(0, older, pane.Width, 1), model);
        DrawNotice(pane.Sub(0, older + 1, pane.Width, 1), model);
        FooterPanel.Draw(pane.From(older + 2), model);
    }

    private static void DrawNotice(Pane row, ScreenModel model)
    {
        if (model.Notice is { } notice && (notice.IsTrouble || model.Now - notice.At < Fresh))
        {
            row.WriteFit(0, 0, notice.Text, notice.IsTrouble ? Ink.Alert : Ink.Strong);
        }
        else if (model.Status.LogInTrouble)
        {
            row.WriteFit(0, 0, model.Status.Log, Ink.Alert);
        }
        else
        {
            row.WriteFit(0, 0, model.Status.Port, Ink.Faint);
        }
    }
}
