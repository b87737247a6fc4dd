namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>The last session as <c>warmup review</c> tells it.</summary>
internal static class LastSessionLines
{
    internal static IReadOnlyList<ReviewLine> Of(ReviewModel model, int columns) => model.LastSession.Length == 0
        ? [new(ReviewTexts.NoLastSession, Ink.Alert)]
        : [.. model.LastSession.TrimEnd('\n').Split('\n').SelectMany(line => Of(line, columns))];

    /// <summary>What is set in is a table and keeps its columns as long as it fits; a line that stands alone is a heading.</summary>
    private static IEnumerable<ReviewLine> Of(string line, int columns)
    {
        if (line.Length == 0)
        {
            return [ReviewLine.Blank];
        }

        int indent = line.Length - line.TrimStart(' ').Length;
        Ink ink = indent == 0 && !line.Contains(' ', StringComparison.Ordinal) ? Ink.Strong : Ink.Plain;
        return CellText.Columns(line) <= columns ? [new(line, ink)] : ReviewLine.Wrapped(line, columns, ink, indent);
    }
}
