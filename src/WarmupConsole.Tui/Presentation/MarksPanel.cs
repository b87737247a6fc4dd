using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tui.Screens;

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
        if (model.Prompt is { } prompt)
        {
            DrawPrompt(row, prompt, model);
        }
        else if (model.Line.Anchor is { } anchor)
        {
            DrawOpen(row, model, anchor);
        }
        else if (model.Session is { State: LiveState.Finished, Marks.Count: > 0 })
        {
            row.WriteFit(0, 0, ScreenTexts.FinishedHint, Ink.Faint);
        }
        else if (model.Session.Marks.Count > 0)
        {
            string waiting = Waiting(model.Session);
            row.WriteRight(0, waiting, Ink.Plain);
            row.Sub(0, 0, row.Width - waiting.Length - 2, 1).WriteFit(0, 0, Newest(model.Session), Ink.Strong);
        }
        else
        {
            row.WriteFit(0, 0, ScreenTexts.NoMarks, Ink.Faint);
        }
    }

    /// <summary>All marks of the newest line: one that held two was understood as two.</summary>
    internal static string Newest(LiveSession session) => string.Join("; ", session.NewestLine.SkipLast(1).Select(mark => ScreenTexts.Of("{0}  {1}", mark.Id, mark.Echo)).Append(Words(session.Marks[^1])));

    internal static string Words(LiveMark mark) =>
        ScreenTexts.Of("{0}  {1}, {2}", mark.Id, Placed(mark), mark.IsFlushed ? ScreenTexts.Saved : ScreenTexts.Saving);

    /// <summary>With the count of its key in the ladder, as going up and coming down are two; not where its words name another key.</summary>
    private static string Placed(LiveMark mark) =>
        mark.Anchor.Tonic is not { } tonic || (mark.Content.Key is { } named && (named.Midi - tonic.Midi) % 12 != 0) ? mark.Echo : ScreenTexts.Of(ScreenTexts.MarkOfKey, mark.Echo, mark.Anchor.Rung + 1);

    private static string Waiting(LiveSession session) =>
        session.Pins.Count() is > 0 and int pins ? ScreenTexts.Of(ScreenTexts.PinsWait, pins) : "";

    /// <summary>A long text shows its end, where the letters appear.</summary>
    private static void DrawOpen(Pane row, ScreenModel model, MarkAnchor anchor)
    {
        string word = model.Line.Pin is null ? ScreenTexts.MarkWord : ScreenTexts.PinWord;
        string prompt = anchor.Tonic is { } tonic
            ? ScreenTexts.Of(ScreenTexts.MarkPromptAt, word, model.Notes.WriteName(tonic), anchor.Rung + 1)
            : word + " ";
        string hint = row.Width < NarrowColumns ? "" : Hint(model);
        string text = model.Line.Text;
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

    private static void DrawPrompt(Pane row, PromptLine prompt, ScreenModel model)
    {
        IReadOnlyList<string> found = model.Found;
        (string ask, string example) = ScreenTexts.Prompts[prompt.Kind];
        int x = row.Write(0, 0, ask + " ", Ink.Mark);
        x = row.Write(x, 0, prompt.Text, Ink.Strong);
        row.Write(x, 0, Cursor, Ink.Live);
        string answer = string.Join("  ", found.Select((title, index) => ScreenTexts.Of("{0} {1}", index + 1, title)));
        string understood = found.Count > 0 ? answer : Understood(prompt, model.Session);
        row.WriteFit(x + 3, 0, understood.Length > 0 ? understood : example, understood.Length > 0 ? Ink.Plain : Ink.Faint);
    }

    /// <summary>What this evening's words would do to the ladders.</summary>
    private static string Understood(PromptLine prompt, LiveSession session) =>
        prompt.Kind == PromptKind.Tonight && TonightText.Read(prompt.Text, session.Warmup.UsualChoir) is { IsAsUsual: false } tonight
            ? TonightText.Effect(tonight, session.Warmup.UsualChoir)
            : "";

    private static string Hint(ScreenModel model) =>
        MarkSuggestions.For(model.Line.Text, model.Session.Warmup.Choir, model.Session.Marks) is [{ } first, ..]
            ? ScreenTexts.Of(ScreenTexts.Suggested, first)
            : ScreenTexts.MarkHint;
}
