using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>The catalogue: what the letters find, each with its stage; a tick where the plan has it already.</summary>
internal static class CataloguePanel
{
    private const string Cursor = "▏";
    private const int Stage = 10;

    internal static void Draw(Pane pane, PlanModel model)
    {
        string title = model.Mode == PlanMode.Replace
            ? ScreenTexts.Of(PlanTexts.ReplaceTitle, model.Draft.Step?.Exercise.Title ?? "")
            : ScreenTexts.Of(PlanTexts.PutInTitle, model.Draft.Warmup.Steps.Count == 0 ? 0 : model.Draft.Selected + 1);
        pane.WriteFit(0, 0, title, Ink.Strong);
        int x = pane.Write(0, 1, PlanTexts.Filter, Ink.Mark);
        x = pane.Write(x, 1, model.Letters, Ink.Strong);
        x = pane.Write(x, 1, Cursor, Ink.Live);
        pane.WriteFit(x + 2, 1, model.Letters.Length == 0 ? PlanTexts.FilterHint : "", Ink.Faint);
        if (model.Found.Count == 0)
        {
            pane.WriteFit(0, 2, PlanTexts.NothingFound);
        }

        DrawFound(pane.From(2), model);
    }

    /// <summary>What the chosen one trains, and in a replacement what both train.</summary>
    internal static string About(WarmupStep offered, PlanModel model)
    {
        Exercise exercise = offered.Exercise;
        string shared = model is { Mode: PlanMode.Replace, Draft.Step: { } step } ? string.Join(", ", Alternatives.Shared(step.Exercise, exercise).Select(PurposeData.Words)) : "";
        return shared.Length > 0 ? ScreenTexts.Of(PlanTexts.AlsoTrains, shared)
            : exercise.Purposes.Count > 0 ? ScreenTexts.Of(PlanTexts.Trains, string.Join(", ", exercise.Purposes.Select(PurposeData.Words)))
            : exercise.Listen.Length > 0 ? ScreenTexts.ListenFor + exercise.Listen
            : exercise.Instruction;
    }

    private static void DrawFound(Pane pane, PlanModel model)
    {
        int first = Math.Clamp(model.Chosen - (pane.Height / 2), 0, Math.Max(0, model.Found.Count - pane.Height));
        for (int row = 0; row < pane.Height && first + row < model.Found.Count; row++)
        {
            Exercise exercise = model.Found[first + row];
            bool isChosen = first + row == model.Chosen;
            Ink ink = isChosen ? Ink.Key : Ink.Plain;
            bool isUsed = model.Draft.Warmup.Plan.Steps.Any(step => step.ExerciseId == exercise.Id);
            pane.Write(0, row, isChosen ? "▶" : isUsed ? "✓" : " ", ink);
            int title = pane.Width - 2 - Stage - 1;
            pane.Sub(2, row, title, 1).WriteFit(0, 0, exercise.Title, ink);
            pane.Sub(2 + title + 1, row, Stage, 1).WriteFit(0, 0, StageData.Words(exercise.Stage), isChosen ? Ink.Key : Ink.Faint);
        }
    }
}
