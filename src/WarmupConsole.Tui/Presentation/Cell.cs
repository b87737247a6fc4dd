namespace WarmupConsole.Tui.Presentation;

/// <summary>One place on the screen. The text is one character as a reader sees it; empty behind a character two columns wide.</summary>
public readonly record struct Cell(string Text, Ink Ink)
{
    public static Cell Blank => new(" ", Ink.Plain);
}
