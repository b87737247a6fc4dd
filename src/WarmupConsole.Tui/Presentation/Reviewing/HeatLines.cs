using System.Globalization;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Parts against pitches. The shade is a sign of its own, and the numbers stand beside it: nothing depends on colour.</summary>
internal static class HeatLines
{
    private const int PitchColumns = 6;
    private const int CellColumns = 13;

    internal static ReviewPage Of(ReviewModel model, int columns)
    {
        if (model.Heat.Count == 0)
        {
            return new([], [new(ReviewTexts.NoHeat)]);
        }

        int shown = Math.Clamp((columns - PitchColumns) / CellColumns, 1, model.Choir.Parts.Count);
        string parts = string.Concat(model.Choir.Parts.Take(shown).Select(part => Filled(CellText.Fit(part.Name, CellColumns - 1))));
        int hidden = model.Choir.Parts.Count - shown;
        return new(
            [
                .. ReviewLine.Wrapped(ReviewTexts.HeatHead, columns, Ink.Faint),
                .. hidden == 0 ? (ReviewLine[])[] : [new(ScreenTexts.Of(ReviewTexts.MoreParts, hidden), Ink.Strong)],
                new(new string(' ', PitchColumns) + parts, Ink.Strong),
            ],
            [.. model.Heat.Select(row => new ReviewLine(Row(row, model, shown)))]);
    }

    private static string Row(HeatRow row, ReviewModel model, int shown) =>
        model.Choir.Notes.Write(KeySpelling.TonicFor(row.Midi, Mode.Major)).PadRight(PitchColumns) + string.Concat(row.Cells.Take(shown).Select(cell => Filled(Cell(cell))));

    private static string Cell(HeatCell? cell) => cell is not { } known ? "" : string.Create(
        CultureInfo.InvariantCulture, $"{Shade(known)} {known.Marked:0.#}/{known.Sung:0}{(known.IsEasy ? "" : "*")}");

    private static string Shade(HeatCell cell) => cell switch
    {
        { Marked: <= 0 } => "·",
        { Share: < 0.10 } => "░",
        { Share: < 0.25 } => "▒",
        { Share: < 0.50 } => "▓",
        _ => "█",
    };

    private static string Filled(string text) => text + new string(' ', Math.Max(1, CellColumns - CellText.Columns(text)));
}
