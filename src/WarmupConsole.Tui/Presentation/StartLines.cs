using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tui.Presentation;

/// <summary>What a director wants to know before the first note, a row each: tonight, the check, what was heard lately, what is needed, the files.</summary>
internal static class StartLines
{
    private const int Label = 9;

    /// <summary>As many as there are rows for, the most important first.</summary>
    internal static void Draw(Pane pane, ScreenModel model)
    {
        DrawTonight(pane.Sub(0, 0, pane.Width, 1), model.Session.Warmup);
        if (model.Status.Start is not { } card)
        {
            return;
        }

        (string Name, string Words)[] rows =
        [
            (ScreenTexts.CheckLabel, card.Check),
            (ScreenTexts.HeardLabel, First(card.Heard, ScreenTexts.NothingHeard)),
            (ScreenTexts.NeedsLabel, First(card.Needs, ScreenTexts.NoNeeds)),
            (ScreenTexts.FolderLabel, card.Folder),
        ];
        foreach ((int index, (string name, string words)) in rows.Index())
        {
            DrawRow(pane.Sub(0, index + 1, pane.Width, 1), name, words, Ink.Plain);
        }
    }

    private static void DrawTonight(Pane row, Warmup warmup)
    {
        Tonight tonight = warmup.Tonight;
        string words = tonight.IsAsUsual ? ScreenTexts.TonightUsualHint : TonightText.Write(tonight, warmup.UsualChoir);
        DrawRow(row, ScreenTexts.TonightLabel, words, tonight.IsAsUsual ? Ink.Plain : Ink.Strong);
    }

    private static void DrawRow(Pane row, string name, string words, Ink ink)
    {
        if (row.Height > 0)
        {
            row.Write(0, 0, name, Ink.Faint);
            row.WriteFit(Label, 0, words, ink);
        }
    }

    private static string First(IReadOnlyList<string> lines, string none) => lines.Count switch
    {
        0 => none,
        1 => lines[0],
        _ => ScreenTexts.Of(ScreenTexts.AndMore, lines[0], lines.Count - 1),
    };
}
