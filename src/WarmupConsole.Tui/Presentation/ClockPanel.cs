using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Time spent, planned and projected, and what comes next.</summary>
internal static class ClockPanel
{
    private static readonly TimeSpan Noticeable = TimeSpan.FromSeconds(20);

    /// <summary>Draws, and returns what is left below.</summary>
    internal static Pane Draw(Pane pane, ScreenModel model)
    {
        LiveSession session = model.Session;
        TimeSpan whole = session.Clocks.WholeAt(model.Now);
        int row = 0;
        if (session.Step is { } step)
        {
            pane.WriteFit(0, row++, Line(ScreenTexts.StepTime, session.Clocks.StepAt(model.Now), step.Planned), Ink.Plain);
        }

        pane.WriteFit(0, row++, Line(ScreenTexts.WholeTime, whole, session.Warmup.Planned), Ink.Strong);
        DrawBar(pane.Sub(0, row++, pane.Width, 1), whole, session.Warmup.Planned);
        pane.WriteFit(0, row++, Outlook(Projection.Whole(session, model.Now), session.Warmup.Planned), Ink.Plain);
        row += pane.Height > 10 ? 1 : 0;
        pane.WriteFit(0, row++, Next(model), Ink.Strong);
        return pane.From(row + (pane.Height > 10 ? 1 : 0));
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
        return over.Duration() < Noticeable
            ? ScreenTexts.Of(ScreenTexts.OnTime, ends)
            : ScreenTexts.Of(over > TimeSpan.Zero ? ScreenTexts.Late : ScreenTexts.Early, ends, ScreenTexts.Clock(over.Duration()));
    }

    private static string Next(ScreenModel model) => (model.IsSung, model.AfterShown) switch
    {
        (false, _) => ScreenTexts.Of(ScreenTexts.RoundOf, model.Session.RoundIndex + 1, Math.Max(1, model.Session.Step?.Rounds ?? 1)),
        (true, null) => ScreenTexts.LastKey,
        (true, { } rung) => $"{ScreenTexts.NextKey} {rung.Tonic.Name}",
    };
}
