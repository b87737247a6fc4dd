using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>For a window too small for the whole: key, state, time left, who rests, the newest word, and how to silence.</summary>
internal static class TinyPage
{
    private const int RoomyRows = 10;

    internal static void Draw(Pane pane, ScreenModel model)
    {
        DrawState(pane.Sub(0, 0, pane.Width, 1), model);
        int last = pane.Height - 1;
        Block[] lines = [.. Lines(model, pane).Take(Math.Max(0, last - 1))];
        int large = DrawLarge(pane.Sub(0, 1, pane.Width, last - 1 - lines.Length), model);
        Block.DrawAll(pane.From(1 + large), lines);
        if (last > 0)
        {
            DrawFoot(pane.Sub(0, last, pane.Width, 1), model);
        }
    }

    private static void DrawState(Pane row, ScreenModel model)
    {
        string state = HeaderPanel.StateWord(model.Session);
        row.WriteFit(0, 0, state, model.Session.Hold == Hold.None ? Ink.Live : Ink.Alert);
        LiveTimers timers = LiveTimers.At(model.Session, model.Now);
        string left = ScreenTexts.Of(ScreenTexts.TimeLeft, ScreenTexts.Clock(timers.WholeProjected - timers.WholeSpent));
        if (model.Session.State != LiveState.Finished && CellText.Columns(state) + left.Length + 2 <= row.Width)
        {
            row.WriteRight(0, left, Ink.Strong);
        }
    }

    /// <summary>The most important first: what does not fit is left out from the end.</summary>
    private static IEnumerable<Block> Lines(ScreenModel model, Pane pane)
    {
        IEnumerable<(string Text, Ink Ink)> texts = [(Words(model), Ink.Strong), (Call(model), Ink.Strong), (Resting(model), Ink.Plain)];
        (string text, Ink ink) = NoticePanel.News(model) ?? (model.Session.Marks.Count > 0 ? MarksPanel.Newest(model.Session) : "", Ink.Plain);
        return
        [
            .. texts.Where(line => line.Text.Length > 0).Select(line => Block.Line(line.Text, line.Ink)),
            .. Block.Paragraph(text, pane.Width, pane.Height < RoomyRows ? 1 : 3, ink),
        ];
    }

    private static int DrawLarge(Pane pane, ScreenModel model)
    {
        string text = model.IsSung ? KeyPanel.Large(model) : ScreenTexts.Of("{0}", model.Beat?.Index + 1 ?? 0);
        bool fits = text.Length > 0 && BlockLetters.ScaleFor(text, pane.Width, pane.Height) > 0;
        return fits && model.Session.State is not (LiveState.Ready or LiveState.Finished) ? BlockLetters.Draw(pane, text, Ink.Key) : 0;
    }

    private static void DrawFoot(Pane row, ScreenModel model)
    {
        if (model.Line.IsOpen || model.Prompt is not null)
        {
            MarksPanel.DrawLine(row, model);
            return;
        }

        int after = row.Write(0, 0, ScreenTexts.SilenceHint);
        if (after + 2 + ScreenTexts.LargerShowsMore.Length <= row.Width)
        {
            row.WriteRight(0, ScreenTexts.LargerShowsMore, Ink.Faint);
        }
    }

    private static string Words(ScreenModel model) => model switch
    {
        { Session.State: LiveState.Ready } => "",
        { Session.State: LiveState.Finished } => ScreenTexts.FinishedHint,
        { HasNothingToLead: true } => ScreenTexts.NoKeyTitle,
        { IsSung: true } => KeyPanel.KeyName(model),
        { Phase: { } phase } => ScreenTexts.Phases[phase.Action],
        _ => "",
    };

    private static string Call(ScreenModel model) => model.Session.Hold == Hold.None ? CallToAct.Of(model) ?? "" : "";

    private static string Resting(ScreenModel model)
    {
        if (!model.IsSung || model.Shown is not { } rung || model.Session.State is LiveState.Ready or LiveState.Finished)
        {
            return "";
        }

        string names = string.Join(", ", rung.Parts.Where(part => !part.Sings).Select(part => part.Part.Name));
        return names.Length > 0 ? ScreenTexts.Of(ScreenTexts.Resting, names) : ScreenTexts.AllSing;
    }
}
