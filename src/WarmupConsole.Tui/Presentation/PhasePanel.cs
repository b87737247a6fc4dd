using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>A body or breathing step: what to do and the count, in large letters.</summary>
internal static class PhasePanel
{
    internal static void Draw(Pane pane, ScreenModel model)
    {
        if (model.Exercise is not { } exercise)
        {
            pane.WriteFit(0, 0, ScreenTexts.OpenSession, Ink.Strong);
            pane.WriteFit(0, 2, ScreenTexts.OpenSessionHint);
            return;
        }

        if (model.Session.State != LiveState.Phase || model.Phase is not { } phase)
        {
            DrawRound(pane, model, exercise);
            return;
        }

        int half = (pane.Height - 3) / 2;
        int used = BlockLetters.Draw(pane.Sub(0, 0, pane.Width, half), ScreenTexts.Phases[phase.Action], Ink.Key);
        pane.WriteFit(0, used, phase.Say, Ink.Strong);
        if (model.Beat is { } beat)
        {
            BlockLetters.Draw(pane.Sub(0, used + 2, pane.Width, half), ScreenTexts.Of("{0}", beat.Index + 1), Ink.Live);
        }

        pane.WriteFit(0, pane.Height - 1, Caption(model, phase.Counts), Ink.Plain);
    }

    /// <summary>Before it begins: what a round consists of.</summary>
    private static void DrawRound(Pane pane, ScreenModel model, Exercise exercise)
    {
        string word = ScreenTexts.LargeStages[exercise.Stage];
        int row = BlockLetters.Draw(pane.Sub(0, 0, pane.Width, Math.Max(1, pane.Height / 2)), word, Ink.Key) + 1;
        foreach (BreathPhase phase in exercise.Phases)
        {
            string name = ScreenTexts.Phases[phase.Action].ToLowerInvariant();
            pane.WriteFit(0, row++, ScreenTexts.Of("{0,-5}{1,3}  {2}", name, phase.Counts, phase.Say), Ink.Strong);
        }

        pane.WriteFit(0, row, Rounds(model.Session.Step?.Rounds ?? 1));
    }

    private static string Rounds(int count) => count == 1 ? ScreenTexts.OneRound : ScreenTexts.Of(ScreenTexts.Rounds, count);

    private static string Caption(ScreenModel model, int counts)
    {
        string round = ScreenTexts.Of(ScreenTexts.RoundOf, model.Session.RoundIndex + 1, model.Session.Step?.Rounds ?? 1);
        return model.Beat is { } beat ? ScreenTexts.Of(ScreenTexts.Counts, beat.Index + 1, counts) + "   " + round : round;
    }
}
