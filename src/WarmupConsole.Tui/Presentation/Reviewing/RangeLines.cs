using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Each part's ranges, and the limits that could move.</summary>
internal static class RangeLines
{
    private const int Indent = 3;
    private const int NameColumns = 16;

    internal static IReadOnlyList<ReviewLine> Of(ReviewModel model, int columns) =>
    [
        .. model.Choir.Parts.Select(part => new ReviewLine(Part(part, model))),
        ReviewLine.Blank,
        .. model.Ranges.Count == 0 ? [new(ReviewTexts.NoAdvice)] : model.Ranges.SelectMany(advice => Advice(advice, model, columns)),
    ];

    private static string Part(Part part, ReviewModel model) =>
        $"{Filled(CellText.Fit(part.Name, NameColumns - 1))}comfortable {Range(part.Range.Comfortable, model)}, at all {Range(part.Range.Extreme, model)}";

    private static string Filled(string name) => name + new string(' ', NameColumns - CellText.Columns(name));

    private static string Range(PitchRange range, ReviewModel model) => $"{model.Choir.Notes.Write(range.Low)}–{model.Choir.Notes.Write(range.High)}";

    private static IEnumerable<ReviewLine> Advice(RangeAdvice advice, ReviewModel model, int columns) =>
    [
        .. ReviewLine.Wrapped(FindingText.Title(advice, model.Choir), columns, Ink.Strong),
        .. ReviewLine.Wrapped(FindingText.Sentence(advice, model.Choir), columns, indent: Indent),
        ReviewLine.Blank,
    ];
}
