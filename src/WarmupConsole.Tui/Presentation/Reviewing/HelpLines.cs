namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>The help of the review: its keys, and what each page shows.</summary>
internal static class HelpLines
{
    private const int LabelColumns = 14;

    internal static IReadOnlyList<ReviewLine> Of(int columns) =>
    [
        .. ReviewTexts.HelpKeys.SelectMany(row => Row(row.Keys, row.Words, columns)),
        ReviewLine.Blank,
        .. ReviewTexts.Views.Zip(ReviewTexts.HelpPages).SelectMany(page => Row(page.First, page.Second, columns)),
        ReviewLine.Blank,
        .. ReviewLine.Wrapped(ReviewTexts.HelpCommands, columns),
    ];

    private static IEnumerable<ReviewLine> Row(string label, string words, int columns) => ReviewLine.Wrapped(words, columns, indent: LabelColumns)
        .Select((line, index) => index == 0 ? line with { Text = label.PadRight(LabelColumns) + line.Text.TrimStart() } : line);
}
