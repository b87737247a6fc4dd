using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Each finding with what it rests on.</summary>
internal static class FindingLines
{
    private const int Indent = 3;

    internal static IReadOnlyList<ReviewLine> Of(ReviewModel model, int columns) =>
        model.Findings.Count == 0 ? [new(ReviewTexts.NoFindings)] : [.. model.Findings.Index().SelectMany(finding => Of(finding.Index, finding.Item, model, columns))];

    private static IEnumerable<ReviewLine> Of(int index, Finding finding, ReviewModel model, int columns) =>
    [
        .. ReviewLine.Wrapped($"{index + 1}. {FindingText.Title(finding, model.Choir)}  [{finding.Id}]", columns, Ink.Strong),
        .. FindingText.Sentences(finding, model.Choir).SelectMany(sentence => ReviewLine.Wrapped(sentence, columns, indent: Indent)),
        ReviewLine.Blank,
    ];
}
