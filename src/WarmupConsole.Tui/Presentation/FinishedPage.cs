using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tui.Presentation;

/// <summary>After the last step: how long it took, what was heard, and where it is kept.</summary>
internal static class FinishedPage
{
    private const int LargestWord = 10;
    private const int MostAhead = 8;

    private const int WideColumns = 104;
    private const int TimesColumns = 42;
    private const int ClockColumns = 7;

    internal static void Draw(Pane whole, ScreenModel model)
    {
        bool isWide = whole.Width >= WideColumns && model.Status.Ahead.Times.Count > 0;
        Pane body = whole.Sub(0, 0, isWide ? whole.Width - TimesColumns - 2 : whole.Width, whole.Height);
        DrawTimes(whole.Sub(body.Width + 2, 1, isWide ? TimesColumns : 0, whole.Height - 1), model.Status.Ahead.Times);
        LiveSession session = model.Session;
        int blank = body.Height >= 16 ? 1 : 0;
        Pane word = body.Sub(0, blank, body.Width / 2, Math.Min(LargestWord, Math.Max(BlockLetters.Rows(1), body.Height / 4)));
        int rows = BlockLetters.Draw(word, ScreenTexts.Finished, Ink.Key);
        int beside = BlockLetters.Columns(ScreenTexts.Finished, Math.Max(1, BlockLetters.ScaleFor(ScreenTexts.Finished, word.Width, word.Height))) + 3;
        body.WriteFit(beside, blank + (rows / 2), ScreenTexts.Of(ScreenTexts.Took, ScreenTexts.Clock(session.Clocks.WholeAt(model.Now)), ScreenTexts.Clock(session.Warmup.Planned)), Ink.Strong);
        int row = blank + rows + blank;
        row += DrawAhead(body.Sub(0, row, body.Width, Math.Min(MostAhead, body.Height - row - 6)), model.Status.Ahead.Sentences);
        row += DrawRehearsal(body.Sub(0, row, body.Width, body.Height - row - 4), session.RehearsalMarks);
        DrawMarks(body.Sub(0, row, body.Width, body.Height - row - 3), session.Marks);
        body.WriteFit(0, body.Height - 3, ScreenTexts.RehearsalHint);
        body.WriteFit(0, body.Height - 2, $"{ScreenTexts.LogTitle}: {model.Status.Log}", model.Status.LogInTrouble ? Ink.Alert : Ink.Plain);
        body.WriteFit(0, body.Height - 1, Next(session), Ink.Strong);
    }

    /// <summary>Planned and real minutes side by side, as many steps as there are rows for; what took half a minute more stands out.</summary>
    private static void DrawTimes(Pane pane, IReadOnlyList<StepTime> times)
    {
        pane.WriteRight(0, ScreenTexts.PlannedAndTook, Ink.Faint);
        foreach ((int index, StepTime time) in times.Take(Math.Max(0, pane.Height - 1)).Index())
        {
            bool isLong = time.Spent - time.Planned >= TimeSpan.FromSeconds(30);
            pane.Sub(0, index + 1, pane.Width - (2 * ClockColumns) - 1, 1).WriteFit(0, 0, time.Title);
            pane.Sub(0, index + 1, pane.Width - ClockColumns, 1).WriteRight(0, ScreenTexts.Clock(time.Planned));
            pane.WriteRight(index + 1, time.Spent == TimeSpan.Zero ? ScreenTexts.NeverBegan : ScreenTexts.Clock(time.Spent), isLong ? Ink.Key : Ink.Plain);
        }
    }

    /// <summary>Returns the rows used; none before there is anything to tell.</summary>
    private static int DrawAhead(Pane pane, IReadOnlyList<string> ahead)
    {
        if (ahead.Count == 0)
        {
            return 0;
        }

        pane.WriteFit(0, 0, ScreenTexts.AheadTitle, Ink.Strong);
        bool hasRoom = ahead.Sum(sentence => CellText.Wrap(sentence, pane.Width - 2).Count) < pane.Height;
        Block[] lines = [.. ahead.SelectMany(sentence => Block.Paragraph(sentence, pane.Width - 2, hasRoom ? pane.Height : 1, Ink.Plain)).Take(pane.Height - 1)];
        Block.DrawAll(pane.Sub(2, 1, pane.Width - 2, pane.Height - 1), lines);
        return lines.Length + 1;
    }

    /// <summary>The newest first, three at most.</summary>
    private static int DrawRehearsal(Pane pane, IReadOnlyList<RehearsalMark> marks)
    {
        RehearsalMark[] shown = [.. marks.Reverse().Take(Math.Min(3, Math.Max(0, pane.Height - 3)))];
        if (shown.Length == 0)
        {
            return 0;
        }

        pane.WriteFit(0, 0, ScreenTexts.RehearsalTitle, Ink.Strong);
        foreach ((int index, RehearsalMark mark) in shown.Index())
        {
            pane.WriteFit(2, index + 1, mark.Echo);
        }

        return shown.Length + 1;
    }

    /// <summary>Pins are best put in words while they are remembered.</summary>
    private static string Next(LiveSession session) =>
        session.Pins.Count() is > 0 and int pins ? ScreenTexts.Of(ScreenTexts.PinsToSay, pins) : ScreenTexts.WhatNext;

    /// <summary>The newest first: a mark added now is seen at once.</summary>
    private static void DrawMarks(Pane pane, IReadOnlyList<LiveMark> marks)
    {
        pane.WriteFit(0, 0, marks.Count > 0 ? ScreenTexts.MarksTitle : ScreenTexts.NoMarksMade, Ink.Strong);
        int room = pane.Height - 1;
        int shown = marks.Count <= room ? marks.Count : Math.Max(0, room - 1);
        for (int index = 0; index < shown; index++)
        {
            pane.WriteFit(2, index + 1, MarksPanel.Words(marks[^(index + 1)]));
        }

        if (shown < marks.Count)
        {
            pane.WriteFit(2, shown + 1, ScreenTexts.Of(ScreenTexts.MoreBefore, marks.Count - shown), Ink.Faint);
        }
    }
}
