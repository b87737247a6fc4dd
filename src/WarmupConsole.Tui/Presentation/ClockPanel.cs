using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Time spent, planned and projected, and what comes next.</summary>
internal static class ClockPanel
{
    private const int RoomyRows = 10;

    /// <summary>Draws, and returns what is left below.</summary>
    internal static Pane Draw(Pane pane, ScreenModel model)
    {
        LiveTimers timers = LiveTimers.At(model.Session, model.Now);
        if (model.Session.Step is null)
        {
            pane.WriteFit(0, 0, $"{ScreenTexts.WholeTime} {ScreenTexts.Clock(timers.WholeSpent)}", Ink.Strong);
            return pane.From(2);
        }

        pane.WriteFit(0, 0, Line(ScreenTexts.StepTime, timers.StepSpent, timers.StepPlanned), Ink.Plain);
        pane.WriteFit(0, 1, Line(ScreenTexts.WholeTime, timers.WholeSpent, timers.WholePlanned), Ink.Strong);
        DrawBar(pane.Sub(0, 2, pane.Width, 1), timers.WholeSpent, timers.WholePlanned);
        pane.WriteFit(0, 3, Outlook(timers.WholeProjected, timers.WholePlanned), Ink.Plain);
        int blank = pane.Height > RoomyRows ? 1 : 0;
        pane.WriteFit(0, 4 + blank, Next(model), Ink.Strong);
        return pane.From(5 + (2 * blank));
    }

    private static string Line(string name, TimeSpan spent, TimeSpan planned) =>
        ScreenTexts.Of("{0,-6}{1,5} {2} {3}", name, ScreenTexts.Clock(spent), ScreenTexts.TimeOf, ScreenTexts.Clock(planned));

    private static void DrawBar(Pane bar, TimeSpan spent, TimeSpan planned)
    {
        double part = planned > TimeSpan.Zero ? Math.Clamp(spent / planned, 0, 1) : 0;
        int filled = (int)(part * bar.Width);
        bar.Fill(0, "─", Ink.Faint);
        bar.Sub(0, 0, filled, 1).Fill(0, "━", Ink.Live);
    }

    private static string Outlook(TimeSpan projected, TimeSpan planned)
    {
        TimeSpan over = projected - planned;
        string ends = ScreenTexts.Clock(projected);
        return over.Duration() < LiveCuts.Noticeable
            ? ScreenTexts.Of(ScreenTexts.OnTime, ends)
            : ScreenTexts.Of(over > TimeSpan.Zero ? ScreenTexts.Late : ScreenTexts.Early, ends, ScreenTexts.Clock(over.Duration()));
    }

    private static string Next(ScreenModel model) => (model.IsSung, model.AfterShown) switch
    {
        _ when model.HasNothingToLead => "",
        (false, _) => ScreenTexts.Of(ScreenTexts.RoundOf, model.Session.RoundIndex + 1, Math.Max(1, model.Session.Step?.Rounds ?? 1)),
        (true, null) => ScreenTexts.LastKey,
        (true, { } rung) => $"{ScreenTexts.NextKey} {model.Notes.WriteName(rung.Tonic)}",
    };
}
