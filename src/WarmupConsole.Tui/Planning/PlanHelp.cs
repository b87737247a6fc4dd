using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>All keys of the planning screen on one page, each in a sentence where there is room.</summary>
internal static class PlanHelp
{
    private const int LabelColumns = 8;
    private const int BriefColumns = 11;

    internal static void Draw(Pane body)
    {
        body.WriteFit(0, 0, PlanTexts.HelpTitle, Ink.Key);
        IReadOnlyList<string> hint = CellText.Wrap(PlanTexts.HelpHint, body.Width);
        Block.DrawAll(body.From(1), hint.Select(line => Block.Line(line, Ink.Plain)));
        Pane list = body.From(hint.Count + 1);
        int columns = list.Height >= PlanKeys.Rows.Count ? 1 : 2;
        int perColumn = (PlanKeys.Rows.Count + columns - 1) / columns;
        foreach ((int index, PlanKeyRow key) in PlanKeys.Rows.Index())
        {
            Pane row = list.Sub(index / perColumn * (list.Width / columns), index % perColumn, (list.Width / columns) - 1, 1);
            row.Write(0, 0, key.Label, Ink.Strong);
            row.WriteFit(LabelColumns, 0, key.Brief);
            row.WriteFit(LabelColumns + BriefColumns, 0, columns == 1 ? key.Words : "");
        }
    }
}
