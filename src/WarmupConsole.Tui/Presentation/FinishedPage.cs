using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Tui.Presentation;

/// <summary>After the last step: how long it took, what was heard, and where it is kept.</summary>
internal static class FinishedPage
{
    private const int LargestWord = 10;

    internal static void Draw(Pane body, ScreenModel model)
    {
        LiveSession session = model.Session;
        int blank = body.Height >= 16 ? 1 : 0;
        int row = blank + BlockLetters.Draw(body.Sub(0, blank, body.Width / 2, Math.Min(LargestWord, body.Height / 3)), ScreenTexts.Finished, Ink.Key);
        row += blank;
        body.WriteFit(0, row++, ScreenTexts.Of(ScreenTexts.Took, ScreenTexts.Clock(session.Clocks.WholeAt(model.Now)), ScreenTexts.Clock(session.Warmup.Planned)), Ink.Strong);
        row += blank;
        DrawMarks(body.Sub(0, row, body.Width, body.Height - row - 2), session.Marks);
        body.WriteFit(0, body.Height - 2, $"{ScreenTexts.LogTitle}: {model.Status.Log}", model.Status.LogInTrouble ? Ink.Alert : Ink.Plain);
        body.WriteFit(0, body.Height - 1, Next(session), Ink.Strong);
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
