using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>Turns the planning screen's model into a screenful. Pure: equal models and sizes give equal cells.</summary>
public static class PlanPage
{
    private const int WordRows = 2;
    private const int LeastSide = 27;
    private const int WidestSide = 52;

    public static Canvas Draw(PlanModel model, int width, int height)
    {
        ArgumentNullException.ThrowIfNull(model);
        Canvas canvas = new(width, height);
        if (width < ScreenPresenter.LeastWidth || height < ScreenPresenter.LeastHeight)
        {
            Block.DrawAll(canvas.Whole, Block.Paragraph(PlanTexts.TooSmall, width, Math.Max(1, height), Ink.Strong));
            return canvas;
        }

        Pane page = canvas.Whole.Sub(1, 0, width - 2, height);
        DrawHead(page, model);
        int keys = PlanFooter.Rows(model.Mode, page.Width, height);
        Pane body = page.Sub(0, 1, page.Width, height - 1 - WordRows - keys);
        if (model.HelpOpen)
        {
            PlanHelp.Draw(body);
        }
        else
        {
            DrawBody(body, model);
        }

        DrawWords(page.Sub(0, height - keys - WordRows, page.Width, WordRows), model);
        PlanFooter.Draw(page.From(height - keys), model.Mode);
        return canvas;
    }

    private static void DrawHead(Pane page, PlanModel model)
    {
        Warmup warmup = model.Draft.Warmup;
        string minutes = ScreenTexts.Of(PlanTexts.Minutes, ScreenTexts.Clock(warmup.Planned), warmup.Plan.Minutes);
        string state = model.IsChanged ? $"{minutes}  {PlanTexts.Changed}" : minutes;
        page.WriteRight(0, state, warmup.Planned.TotalMinutes > warmup.Plan.Minutes ? Ink.Mark : Ink.Live);
        string head = ScreenTexts.Of(PlanTexts.Head, model.Name) + (warmup.Plan.Title.Length > 0 ? "   " + warmup.Plan.Title : "");
        page.Sub(0, 0, page.Width - state.Length - 2, 1).WriteFit(0, 0, head, Ink.Strong);
    }

    private static void DrawBody(Pane body, PlanModel model)
    {
        int side = Math.Clamp(body.Width * 36 / 100, LeastSide, WidestSide);
        Pane left = body.Sub(0, 1, body.Width - side - 2, body.Height - 1);
        Pane right = body.Sub(body.Width - side, 1, side, body.Height - 1);
        if (model.IsInCatalogue)
        {
            CataloguePanel.Draw(left, model);
        }
        else
        {
            StepListPanel.Draw(left, model);
        }

        StepPanel.Draw(right, model);
    }

    /// <summary>A word about the last key; else what the check says of the step, then of the rest; else what sounds.</summary>
    private static void DrawWords(Pane pane, PlanModel model)
    {
        (string text, Ink ink) = model switch
        {
            { Word.Length: > 0 } => (model.Word, Ink.Strong),
            { IsInCatalogue: true, Offered: { } offered } => (CataloguePanel.About(offered, model), Ink.Plain),
            { Remarks: [] } => ($"{PlanTexts.NothingRemarked} {model.Sound}", Ink.Faint),
            _ => (Remark(model), model.Remarks.Any(remark => remark.Severity != PlanSeverity.Hint) ? Ink.Strong : Ink.Plain),
        };
        Block.DrawAll(pane, Block.Paragraph(text, pane.Width, WordRows, ink));
    }

    private static string Remark(PlanModel model)
    {
        PlanRemark? own = model.Remarks.FirstOrDefault(remark => remark.Step == model.Draft.Selected) ?? model.Remarks.FirstOrDefault(remark => remark.Step is null);
        PlanRemark shown = own ?? model.Remarks[0];
        string words = ScreenTexts.Of(PlanTexts.Remark, PlanTexts.Severities[shown.Severity], shown.Sentence);
        return own is null ? ScreenTexts.Of(PlanTexts.RemarksElsewhere, words) : words;
    }
}
