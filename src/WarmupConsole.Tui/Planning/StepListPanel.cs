using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>The steps of the plan: number, title, keys, minutes, and a sign where the check has a word about one.</summary>
internal static class StepListPanel
{
    private const int Number = 4;
    private const int Keys = 12;
    private const int Clock = 6;

    internal static void Draw(Pane pane, PlanModel model)
    {
        IReadOnlyList<WarmupStep> steps = model.Draft.Warmup.Steps;
        if (steps.Count == 0)
        {
            pane.WriteFit(0, 0, PlanTexts.NoSteps);
        }

        int first = Math.Clamp(model.Draft.Selected - (pane.Height / 2), 0, Math.Max(0, steps.Count - pane.Height));
        for (int row = 0; row < pane.Height && first + row < steps.Count; row++)
        {
            DrawStep(pane.Sub(0, row, pane.Width, 1), model, first + row);
        }
    }

    private static void DrawStep(Pane row, PlanModel model, int index)
    {
        WarmupStep step = model.Draft.Warmup.Steps[index];
        bool isChosen = index == model.Draft.Selected;
        Ink ink = isChosen ? Ink.Key : Ink.Plain;
        row.Write(0, 0, isChosen ? "▶" : " ", ink);
        row.Write(1, 0, ScreenTexts.Of("{0,2}", index + 1), ink);
        PlanSeverity? worst = model.Remarks.Where(remark => remark.Step == index).Select(remark => (PlanSeverity?)remark.Severity).Max();
        int title = row.Width - Number - Keys - Clock - 3;
        row.Sub(Number, 0, title, 1).WriteFit(0, 0, step.Exercise.Title, ink);
        row.Sub(Number + title + 1, 0, Keys, 1).WriteFit(0, 0, Work(step, model.Draft.Warmup.Choir.Notes), ink);
        row.WriteRight(0, ScreenTexts.Clock(step.Planned), ink);
        row.Write(row.Width - Clock - 1, 0, Sign(worst), worst == PlanSeverity.Hint ? Ink.Faint : Ink.Mark);
    }

    /// <summary>"C–A♭  17", "3 rounds".</summary>
    internal static string Work(WarmupStep step, NoteNaming notes)
    {
        if (step.Exercise.Stage is Stage.Body or Stage.Breathing || step.Rounds > 0)
        {
            return step.Rounds == 1 ? ScreenTexts.OneRound : ScreenTexts.Of(PlanTexts.RoundsOf, step.Rounds);
        }

        Pitch[] tonics = [.. step.Ladder.Rungs.Select(rung => rung.Tonic)];
        return tonics.Length switch
        {
            0 => PlanTexts.NoKeys,
            1 => ScreenTexts.Of(PlanTexts.OneKey, notes.WriteName(tonics[0])),
            _ => ScreenTexts.Of(PlanTexts.KeysOf, notes.WriteName(tonics.MinBy(tonic => tonic.Midi)), notes.WriteName(tonics.MaxBy(tonic => tonic.Midi)), tonics.Length),
        };
    }

    private static string Sign(PlanSeverity? worst) => worst switch
    {
        PlanSeverity.Error => "✗",
        PlanSeverity.Warning => "!",
        PlanSeverity.Hint => "·",
        _ => " ",
    };
}
