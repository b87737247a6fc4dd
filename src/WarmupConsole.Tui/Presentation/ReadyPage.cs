using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The first picture, while the room still talks: what is planned, a word of care, and how to start.</summary>
internal static class ReadyPage
{
    private const int RoomyRows = 16;
    private const int AllLines = 5;
    private const int LeastPlan = 6;

    internal static void Draw(Pane body, ScreenModel model)
    {
        IReadOnlyList<string> care = CellText.Wrap(body.Height < RoomyRows ? ScreenTexts.CareInOneLine : ScreenTexts.CareCard, body.Width - 2);
        int card = care.Count + 1;
        int blank = body.Height >= 2 * RoomyRows ? 1 : 0;
        int foot = card + 1 + blank;
        int lines = Math.Clamp(body.Height - foot - LeastPlan, 1, AllLines);
        Pane top = body.Sub(0, blank, body.Width, body.Height - foot - lines - (2 * blank));
        DrawPlan(top, model.Session.Warmup with { Steps = [.. model.Session.Order.Select(step => model.Session.Warmup.Steps[step])] });
        StartLines.Draw(body.Sub(0, body.Height - foot - lines - blank, body.Width, lines), model);
        DrawCard(body.Sub(0, body.Height - foot, body.Width, card), care);
        body.WriteFit(0, body.Height - 1, ScreenTexts.SpaceStarts, Ink.Key);
    }

    private static void DrawPlan(Pane pane, Warmup warmup)
    {
        int side = Math.Max(20, pane.Width * 34 / 100);
        pane.WriteFit(0, 0, warmup.Steps.Count == 0 ? ScreenTexts.OpenSession : warmup.Plan.Title, Ink.Strong);
        if (warmup.Steps.Count == 0)
        {
            pane.WriteFit(0, 2, ScreenTexts.OpenSessionHint);
            return;
        }

        string minutes = ScreenTexts.Of("{0}", Math.Round(warmup.Planned.TotalMinutes, MidpointRounding.AwayFromZero));
        Pane number = pane.Sub(0, 2, side - 2, Math.Min(10, pane.Height - 3));
        int used = BlockLetters.Draw(number, minutes, Ink.Key);
        pane.WriteFit(0, 2 + used, ScreenTexts.PlannedMinutes);
        DrawSteps(pane.Sub(side + 2, 1, Math.Min(64, pane.Width - side - 2), pane.Height - 1), warmup.Steps);
    }

    private static void DrawSteps(Pane pane, IReadOnlyList<WarmupStep> steps)
    {
        bool all = steps.Count <= pane.Height;
        int shown = all ? steps.Count : Math.Max(0, pane.Height - 1);
        for (int row = 0; row < shown; row++)
        {
            StepsPanel.DrawStep(pane.Sub(0, row, pane.Width, 1), steps[row], 1);
        }

        if (!all)
        {
            pane.WriteFit(2, shown, ScreenTexts.Of(ScreenTexts.More, steps.Count - shown), Ink.Faint);
        }
    }

    private static void DrawCard(Pane card, IReadOnlyList<string> care)
    {
        card.WriteFit(0, 0, "▌ " + ScreenTexts.CareTitle, Ink.Strong);
        for (int row = 0; row < care.Count; row++)
        {
            card.WriteFit(0, row + 1, "▌ " + care[row]);
        }
    }
}
