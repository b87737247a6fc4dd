namespace WarmupConsole.Tui.Presentation;

/// <summary>In place of key and board where a step has no key: why, and how to go on.</summary>
internal static class NoKeyPanel
{
    internal static void Draw(Pane pane, ScreenModel model)
    {
        IReadOnlyList<string> reasons = model.Session.Step?.Ladder.Reasons ?? [];
        string why = reasons.Count > 0 ? string.Join(' ', reasons) : ScreenTexts.NothingToLead;
        Block.DrawAll(
            pane,
            [
                Block.Line(ScreenTexts.NoKeyTitle, Ink.Key),
                .. Block.Paragraph(why, pane.Width, Math.Max(1, pane.Height - 2), Ink.Strong),
                Block.Line(ScreenTexts.SpacePassesOver, Ink.Key),
            ]);
    }
}
