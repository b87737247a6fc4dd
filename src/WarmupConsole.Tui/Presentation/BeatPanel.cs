using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>A circle for each beat of what runs now; the present one is filled.</summary>
internal static class BeatPanel
{
    private const string Now = "●";
    private const string Other = "○";
    private const int Label = 10;

    internal static void Draw(Pane pane, ScreenModel model)
    {
        LiveSession session = model.Session;
        if (session.State == LiveState.Phase && model.Exercise is { } exercise)
        {
            DrawRound(pane, exercise, model);
        }
        else if (model.Beat is { } beat)
        {
            pane.Write(0, 0, ScreenTexts.States[session.State], Ink.Plain);
            DrawDots(pane.Sub(Label, 0, pane.Width - Label, 1), beat);
        }
        else if (CallToAct.Of(model) is { } call)
        {
            pane.WriteFit(0, 0, call, Ink.Strong);
        }
    }

    private static void DrawDots(Pane pane, BeatCount beat)
    {
        int spacing = Math.Clamp(pane.Width / beat.Total, 1, 4);
        for (int index = 0; index < beat.Total; index++)
        {
            bool now = index == beat.Index;
            pane.Write(index * spacing, 0, now ? Now : Other, now ? Ink.Live : Ink.Faint);
        }
    }

    /// <summary>All phases of the round in a row, each with its counts; only the present one where there is no room.</summary>
    private static void DrawRound(Pane pane, Exercise exercise, ScreenModel model)
    {
        int columns = exercise.Phases.Sum(phase => phase.Counts + CellText.Columns(Word(phase)) + 3);
        int x = 0;
        for (int index = 0; index < exercise.Phases.Count; index++)
        {
            bool present = index == model.Session.PhaseIndex;
            if (present || columns <= pane.Width)
            {
                x = DrawPhase(pane, x, exercise.Phases[index], present ? model.Beat : null);
            }
        }
    }

    private static int DrawPhase(Pane pane, int x, BreathPhase phase, BeatCount? beat)
    {
        x = pane.Write(x, 0, Word(phase) + " ", beat is null ? Ink.Faint : Ink.Strong);
        for (int count = 0; count < phase.Counts; count++)
        {
            bool now = count == beat?.Index;
            x = pane.Write(x, 0, now ? Now : Other, now ? Ink.Live : Ink.Faint);
        }

        return x + 2;
    }

    private static string Word(BreathPhase phase) => ScreenTexts.Phases[phase.Action].ToLowerInvariant();
}
