using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tui.Presentation;

/// <summary>All keys on one page, from the key table; in sentences where there is room.</summary>
internal static class HelpPage
{
    private const int LabelColumns = 8;
    private const int BriefColumns = 16;
    private const int RoomyRows = 14;

    // A key, its brief words and a gap.
    private const int ColumnsOfKey = LabelColumns + BriefColumns + 1;

    internal static void Draw(Pane body, ScreenModel model)
    {
        body.WriteFit(0, 0, ScreenTexts.HelpTitle, Ink.Key);
        int row = 1;
        foreach (string line in Lines(body, model))
        {
            body.WriteFit(0, row++, line);
        }

        DrawKeys(body.From(row + (body.Height > RoomyRows ? 1 : 0)));
    }

    /// <summary>The board is explained where every key still has room for its words.</summary>
    private static IEnumerable<string> Lines(Pane body, ScreenModel model)
    {
        IReadOnlyList<string> hint = CellText.Wrap(ScreenTexts.HelpHint, body.Width);
        IReadOnlyList<string> sound = body.Height > RoomyRows ? [.. Sound(model.Status.Port, body.Width), .. CellText.Wrap(model.Status.Hands, body.Width)] : [];
        IReadOnlyList<string> legend = CellText.Wrap(ScreenTexts.BoardLegend, body.Width);
        int left = body.Height - 2 - hint.Count - sound.Count - legend.Count;
        return [.. hint, .. left * (body.Width / ColumnsOfKey) >= KeyTable.Rows.Count ? legend : [], .. sound];
    }

    /// <summary>What the foot of the screen shortens stands here in full.</summary>
    private static IReadOnlyList<string> Sound(string port, int columns) => CellText.Columns(port) > columns ? CellText.Wrap(port, columns) : [];

    private static void DrawKeys(Pane list)
    {
        bool inSentences = list.Height >= KeyTable.Rows.Count;
        int columns = inSentences ? 1 : (KeyTable.Rows.Count + list.Height - 1) / Math.Max(1, list.Height);
        for (int index = 0; index < KeyTable.Rows.Count; index++)
        {
            int perColumn = (KeyTable.Rows.Count + columns - 1) / columns;
            int width = list.Width / columns;
            DrawRow(list.Sub(index / perColumn * width, index % perColumn, width - 1, 1), KeyTable.Rows[index], inSentences);
        }
    }

    private static void DrawRow(Pane row, KeyRow key, bool inSentences)
    {
        row.Write(0, 0, key.Label, Ink.Strong);
        string note = key.Use == LineUse.WhenOpen ? $"{key.Brief} ({ScreenTexts.HelpLineOpen})" : key.Brief;
        row.WriteFit(LabelColumns, 0, inSentences ? key.Brief : note);
        if (inSentences)
        {
            row.WriteFit(LabelColumns + BriefColumns, 0, key.Words);
        }
    }
}
