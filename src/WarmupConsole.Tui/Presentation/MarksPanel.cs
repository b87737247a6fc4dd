using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The mark being written, or the newest one and whether it is safe; where there is room, those before it.</summary>
internal static class MarksPanel
{
    private const string Cursor = "▏";
    private const int NarrowColumns = 50;

    internal static int OlderRows(ScreenModel model, int height)
    {
        int most = height switch { < 30 => 0, < 50 => 2, _ => 5 };
        return model.Session.State is LiveState.Ready or LiveState.Finished ? 0 : most;
    }

    internal static void DrawOlder(Pane pane, ScreenModel model)
    {
        LiveMark[] older = [.. model.Session.Marks.SkipLast(model.Line.IsOpen ? 0 : model.Session.NewestLine.Count).TakeLast(pane.Height)];
        for (int index = 0; index < older.Length; index++)
        {
            pane.WriteFit(0, pane.Height - older.Length + index, Words(older[index]), Ink.Plain);
        }
    }

    internal static void DrawLine(Pane row, ScreenModel model)
    {
        if (model.Line.Anchor is { } anchor)
        {
            DrawOpen(row, model.Line.Text, anchor, model.Notes);
        }
        else if (model.Session is { State: LiveState.Finished, Marks.Count: > 0 })
        {
            row.WriteFit(0, 0, ScreenTexts.FinishedHint, Ink.Faint);
        }
        else if (model.Session.Marks.Count > 0)
        {
            row.WriteFit(0, 0, Newest(model.Session), Ink.Strong);
        }
        else
        {
            row.WriteFit(0, 0, ScreenTexts.NoMarks, Ink.Faint);
        }
    }

    /// <summary>All marks of the newest line: one that held two was understood as two.</summary>
    internal static string Newest(LiveSession session) => string.Join("; ", session.NewestLine.SkipLast(1).Select(mark => ScreenTexts.Of("{0}  {1}", mark.Id, mark.Echo)).Append(Words(session.Marks[^1])));

    internal static string Words(LiveMark mark) =>
        ScreenTexts.Of("{0}  {1}, {2}", mark.Id, mark.Echo, mark.IsFlushed ? ScreenTexts.Saved : ScreenTexts.Saving);

    /// <summary>A long text shows its end, where the letters appear.</summary>
    private static void DrawOpen(Pane row, string text, MarkAnchor anchor, NoteNaming notes)
    {
        string prompt = anchor.Tonic is { } tonic ? ScreenTexts.Of(ScreenTexts.MarkPromptIn, notes.WriteName(tonic)) : ScreenTexts.MarkPrompt;
        string hint = row.Width < NarrowColumns ? "" : ScreenTexts.MarkHint;
        int room = row.Width - prompt.Length - hint.Length - 3;
        string[] elements = [.. CellText.Split(text)];
        int skip = 0;
        while (skip < elements.Length && elements.Skip(skip).Sum(CellText.ColumnsOf) > room)
        {
            skip++;
        }

        int x = row.Write(0, 0, prompt, Ink.Mark);
        x = row.Write(x, 0, string.Concat(elements.Skip(skip)), Ink.Strong);
        row.Write(x, 0, Cursor, Ink.Live);
        row.WriteRight(0, hint, Ink.Faint);
    }
}
