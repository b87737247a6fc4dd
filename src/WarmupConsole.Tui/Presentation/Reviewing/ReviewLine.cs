namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>One line of a page of the review.</summary>
internal readonly record struct ReviewLine(string Text, Ink Ink = Ink.Plain)
{
    /// <summary>A text in as many lines as it needs, the later ones set in like the first.</summary>
    internal static IEnumerable<ReviewLine> Wrapped(string text, int columns, Ink ink = Ink.Plain, int indent = 0) =>
        CellText.Wrap(text, Math.Max(10, columns - indent)).Select(line => new ReviewLine(new string(' ', indent) + line, ink));

    internal static ReviewLine Blank => new("");
}
