using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>For a window too small for more: the key, the state, and how to silence.</summary>
internal static class TinyPage
{
    internal static void Draw(Pane pane, ScreenModel model)
    {
        Ink ink = model.Session.Hold == Hold.None ? Ink.Live : Ink.Alert;
        pane.WriteFit(0, 0, HeaderPanel.StateWord(model.Session), ink);
        int last = pane.Height - 1;
        int next = pane.Height > 3 ? DrawLarge(pane.Sub(0, 1, pane.Width, last - 1), model) + 1 : 1;
        pane.WriteFit(0, Math.Min(next, last - 1), Words(model), Ink.Strong);
        if (last > 0)
        {
            pane.WriteFit(0, last, model.Line.IsOpen ? ScreenTexts.MarkPrompt + model.Line.Text : ScreenTexts.SilenceHint);
        }
    }

    private static int DrawLarge(Pane pane, ScreenModel model)
    {
        string text = model.IsSung ? KeyPanel.Large(model) : ScreenTexts.Of("{0}", model.Beat?.Index + 1 ?? 0);
        bool fits = BlockLetters.ScaleFor(text, pane.Width, pane.Height - 1) > 0;
        return fits && model.Session.State is not (LiveState.Ready or LiveState.Finished)
            ? BlockLetters.Draw(pane.Sub(0, 0, pane.Width, pane.Height - 1), text, Ink.Key)
            : 0;
    }

    private static string Words(ScreenModel model) => model switch
    {
        { Session.State: LiveState.Ready } => ScreenTexts.SpaceStarts,
        { Session.State: LiveState.Finished } => ScreenTexts.FinishedHint,
        { IsSung: true } => KeyPanel.KeyName(model),
        { Phase: { } phase } => ScreenTexts.Phases[phase.Action],
        _ => "",
    };
}
