using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The order of the warm-up, with the present step kept in sight.</summary>
internal static class StepsPanel
{
    internal static void Draw(Pane pane, ScreenModel model)
    {
        WarmupStep[] steps = [.. model.Session.Order.Select(step => model.Session.Warmup.Steps[step] with { Planned = model.Session.Lasts(step) })];
        int present = model.Session.Place < 0 ? steps.Length : model.Session.Place;
        int first = Math.Clamp(present - 1, 0, Math.Max(0, steps.Length - pane.Height));
        for (int row = 0; row < pane.Height && first + row < steps.Length; row++)
        {
            DrawStep(pane.Sub(0, row, pane.Width, 1), steps[first + row], (first + row).CompareTo(present));
        }
    }

    /// <summary>One row: done, present (0) or to come.</summary>
    internal static void DrawStep(Pane row, WarmupStep step, int place)
    {
        Ink ink = place == 0 ? Ink.Strong : place < 0 ? Ink.Faint : Ink.Plain;
        row.Write(0, 0, place == 0 ? "▶" : place < 0 ? "✓" : " ", ink);
        row.Sub(2, 0, row.Width - 8, 1).WriteFit(0, 0, step.Exercise.Title, ink);
        row.WriteRight(0, ScreenTexts.Clock(step.Planned), ink);
    }
}
