using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Who sings now, on which notes, and who rests; a change is announced one key ahead.</summary>
internal static class PartsPanel
{
    /// <summary>Rows it would like to have.</summary>
    internal static int Rows(ScreenModel model) => Math.Min(8, model.Session.Warmup.Choir.Parts.Count);

    internal static void Draw(Pane pane, ScreenModel model)
    {
        if (model.Shown is not { } rung)
        {
            return;
        }

        if (rung.Parts.Count > pane.Height)
        {
            DrawShort(pane, rung);
            return;
        }

        if (LargeParts.Fits(pane, rung))
        {
            LargeParts.Draw(pane, model, rung);
            return;
        }

        int names = Math.Min(10, rung.Parts.Max(part => CellText.Columns(part.Part.Name)));
        for (int row = 0; row < rung.Parts.Count; row++)
        {
            DrawRow(pane.Sub(0, row, pane.Width, 1), rung.Parts[row], Words(rung.Parts[row], model.AfterShown?.Parts[row], model.Notes), names);
        }
    }

    private static void DrawRow(Pane row, RungPart part, string words, int names)
    {
        Ink ink = part.Sings ? Ink.Live : Ink.Faint;
        row.Write(0, 0, part.Sings ? ScreenTexts.Sings : ScreenTexts.RestsSign, ink);
        row.Sub(2, 0, names, 1).WriteFit(0, 0, part.Part.Name, ink);
        row.WriteFit(names + 3, 0, words, ink);
    }

    internal static string Words(RungPart part, RungPart? next, NoteNaming notes) => (part.Sings, next?.Sings) switch
    {
        (true, false) => ScreenTexts.RestsNext,
        (false, true) => ScreenTexts.SingsNext,
        (true, true) when next!.Octaves < part.Octaves => ScreenTexts.LowerNext,
        (true, true) when next!.Octaves > part.Octaves => ScreenTexts.HigherNext,
        (true, _) => part.Span.In(notes),
        (false, _) => ScreenTexts.Rests,
    };

    /// <summary>Many parts in few rows: names only.</summary>
    private static void DrawShort(Pane pane, Rung rung)
    {
        int row = 0;
        foreach (IGrouping<bool, RungPart> group in rung.Parts.GroupBy(part => part.Sings).OrderByDescending(group => group.Key))
        {
            string names = string.Join(' ', group.Select(part => part.Part.Name.Replace(' ', '\u00A0')));
            string sign = group.Key ? ScreenTexts.Sings : ScreenTexts.Rests;
            foreach (string line in CellText.Wrap($"{sign} {names}", pane.Width))
            {
                pane.WriteFit(0, row++, line, group.Key ? Ink.Live : Ink.Faint);
            }
        }
    }
}
