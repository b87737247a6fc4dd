namespace WarmupConsole.Tui.Presentation;

/// <summary>The middle of the screen while a step is led: key and parts, range board, time and order; below them what to sing.</summary>
internal static class RunningPage
{
    private const int Gap = 2;
    private const int LeastSide = 20;

    internal static void Draw(Pane body, ScreenModel model)
    {
        int words = WordsPanel.Rows(model, body);
        int blank = body.Height > 16 ? 1 : 0;
        Pane top = body.Sub(0, blank, body.Width, body.Height - words - (2 * blank));
        DrawTop(top, model);
        WordsPanel.Draw(body.From(body.Height - words), model);
    }

    private static void DrawTop(Pane top, ScreenModel model)
    {
        int side = Math.Max(LeastSide, top.Width * 34 / 100);
        Pane left = top.Sub(0, 0, side, top.Height);
        Pane right = top.Sub(top.Width - side, 0, side, top.Height);
        Pane middle = top.Sub(side + Gap, 0, top.Width - (2 * (side + Gap)), top.Height);
        if (model.HasNothingToLead)
        {
            NoKeyPanel.Draw(top.Sub(0, 0, top.Width - side - Gap, top.Height), model);
        }
        else if (model.IsSung)
        {
            PartsPanel.Draw(KeyPanel.Draw(left, model), model);
            BoardPanel.Draw(middle, model);
        }
        else
        {
            PhasePanel.Draw(top.Sub(0, 0, top.Width - side - Gap, top.Height), model);
        }

        StepsPanel.Draw(ClockPanel.Draw(right, model), model);
    }
}
