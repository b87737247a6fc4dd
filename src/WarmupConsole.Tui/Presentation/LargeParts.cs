using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Who sings and who rests in letters for reading from a metre away, where the key leaves room for it.</summary>
internal static class LargeParts
{
    private const int Indent = 3;
    private const int LeastHeight = 36;
    private static readonly int RowsPerPart = BlockLetters.Rows(1) + 2;

    internal static bool Fits(Pane pane, Rung rung) =>
        pane.Canvas.Height >= LeastHeight
        && rung.Parts.Count * RowsPerPart <= pane.Height
        && rung.Parts.All(part => BlockLetters.CanDraw(Name(part)) && BlockLetters.Columns(Name(part), 1) <= pane.Width - Indent);

    internal static void Draw(Pane pane, ScreenModel model, Rung rung)
    {
        for (int index = 0; index < rung.Parts.Count; index++)
        {
            RungPart part = rung.Parts[index];
            Ink ink = part.Sings ? Ink.Live : Ink.Faint;
            Pane room = pane.Sub(0, index * RowsPerPart, pane.Width, RowsPerPart - 1);
            room.Write(0, 1, part.Sings ? ScreenTexts.Sings : ScreenTexts.RestsSign, ink);
            BlockLetters.Draw(room.Sub(Indent, 0, BlockLetters.Columns(Name(part), 1), BlockLetters.Rows(1)), Name(part), ink);
            room.WriteFit(Indent, BlockLetters.Rows(1), $"{part.Part.Name}  {PartsPanel.Words(part, model.AfterShown?.Parts[index], model.Notes)}", ink);
        }
    }

    private static string Name(RungPart part) => part.Part.Name.ToUpperInvariant();
}
