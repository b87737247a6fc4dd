using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Turns a model into a screenful. Pure: equal models and sizes give equal cells.</summary>
public static class ScreenPresenter
{
    /// <summary>Below this the screen keeps to what <see cref="TinyPage"/> shows.</summary>
    public const int LeastWidth = 60;

    public const int LeastHeight = 16;

    public static Canvas Draw(ScreenModel model, int width, int height)
    {
        Canvas canvas = new(width, height);
        if (width < LeastWidth || height < LeastHeight)
        {
            TinyPage.Draw(canvas.Whole, model);
            return canvas;
        }

        HeaderPanel.Draw(canvas.Whole.Sub(1, 0, width - 2, 1), model);
        int bottom = BottomPanel.Rows(model, width - 2, height);
        Pane body = canvas.Whole.Sub(1, 1, width - 2, height - 1 - bottom);
        DrawBody(body, model);
        BottomPanel.Draw(canvas.Whole.Sub(1, height - bottom, width - 2, bottom), model, height);
        return canvas;
    }

    private static void DrawBody(Pane body, ScreenModel model)
    {
        switch (model)
        {
            case { HelpOpen: true }:
                HelpPage.Draw(body, model);
                break;
            case { Session.State: LiveState.Ready, Tour: { } card }:
                TourPage.Draw(body, card);
                break;
            case { Session.State: LiveState.Ready }:
                ReadyPage.Draw(body, model);
                break;
            case { Session.State: LiveState.Finished }:
                FinishedPage.Draw(body, model);
                break;
            default:
                RunningPage.Draw(body, model);
                break;
        }
    }
}
