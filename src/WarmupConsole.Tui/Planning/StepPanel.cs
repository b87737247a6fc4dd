using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>One step beside the list: its fields, and on the range board all that its ladder asks of each part.</summary>
internal static class StepPanel
{
    private const int Label = 15;
    private const int LeastBoard = 5;

    internal static void Draw(Pane pane, PlanModel model)
    {
        if (model.Shown is not { } step)
        {
            return;
        }

        int used = model.IsInCatalogue ? DrawAbout(pane, step) : DrawFields(pane, model, step);
        if (step.Ladder.Rungs.Count > 0)
        {
            BoardPanel.Draw(pane.From(used + 1), Asked(step, model.Draft.Warmup), model.Draft.Warmup.Choir.Notes, (_, _, _) => { });
        }
        else if (step.Exercise.IsSung)
        {
            Block.DrawAll(pane.From(used + 1), Block.Paragraph(string.Join(' ', step.Ladder.Reasons), pane.Width, Math.Max(1, pane.Height - used - 1), Ink.Plain));
        }
    }

    /// <summary>As many fields as leave room for the board, around the chosen one; all of them while they are changed.</summary>
    private static int DrawFields(Pane pane, PlanModel model, WarmupStep step)
    {
        IReadOnlyList<StepField> fields = StepFields.Of(step);
        int rows = Math.Clamp(pane.Height - LeastBoard - 1, 1, fields.Count);
        int chosen = model.Mode == PlanMode.Fields ? fields.Index().First(field => field.Item == model.Field).Index : 0;
        int first = Math.Clamp(chosen - (rows / 2), 0, fields.Count - rows);
        for (int row = 0; row < rows; row++)
        {
            DrawField(pane.Sub(0, row, pane.Width, 1), model, step, fields[first + row]);
        }

        return rows;
    }

    private static void DrawField(Pane row, PlanModel model, WarmupStep step, StepField field)
    {
        bool isChosen = model.Mode == PlanMode.Fields && model.Field == field;
        row.WriteFit(0, 0, PlanTexts.Fields[field], isChosen ? Ink.Key : Ink.Faint);
        string value = StepFields.Words(step, field, model.Draft.Warmup.Choir);
        row.WriteFit(Label, 0, isChosen ? $"← {value} →" : value, isChosen ? Ink.Key : Ink.Plain);
    }

    private static int DrawAbout(Pane pane, WarmupStep step)
    {
        Block[] lines =
        [
            Block.Line(step.Exercise.Title, Ink.Strong),
            .. Block.Paragraph(step.Exercise.Instruction, pane.Width, 3, Ink.Plain),
            .. step.Exercise.Caution is { Length: > 0 } caution ? Block.Paragraph(ScreenTexts.Of(PlanTexts.Caution, caution), pane.Width, 3, Ink.Strong) : [],
        ];
        Block[] shown = [.. lines.Take(Math.Max(1, pane.Height - LeastBoard - 1))];
        Block.DrawAll(pane, shown);
        return shown.Length;
    }

    /// <summary>From its lowest to its highest note in all keys; a part that never sings keeps the span of the first key, as an outline.</summary>
    private static IReadOnlyList<RungPart> Asked(WarmupStep step, Warmup warmup) =>
        [.. PartCoverage.Of(warmup with { Steps = [step] }).Zip(step.Ladder.Rungs[0].Parts, (coverage, first) => new RungPart(first.Part, coverage.Reached is not null, coverage.Reached ?? first.Span))];
}
