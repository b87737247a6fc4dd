using Terminal.Gui.Drawing;
using WarmupConsole.Tui.Presentation;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace WarmupConsole.Tui.Screens;

/// <summary>How each <see cref="Ink"/> looks. Every difference is also one of glyph, word or weight, so nothing depends on colour alone.</summary>
public sealed class Theme
{
    private readonly Dictionary<Ink, Attribute> _looks;

    private Theme(Dictionary<Ink, Attribute> looks) => _looks = looks;

    /// <summary>A few of the sixteen colours that every terminal has, on black.</summary>
    public static Theme Colours { get; } = new(new()
    {
        [Ink.Plain] = On(StandardColor.Silver, TextStyle.None),
        [Ink.Faint] = On(StandardColor.Gray, TextStyle.None),
        [Ink.Strong] = On(StandardColor.White, TextStyle.Bold),
        [Ink.Key] = On(StandardColor.Yellow, TextStyle.Bold),
        [Ink.Live] = On(StandardColor.Aqua, TextStyle.Bold),
        [Ink.Range] = On(StandardColor.Teal, TextStyle.None),
        [Ink.Mark] = new(new Color(StandardColor.Black), new Color(StandardColor.Yellow), TextStyle.Bold),
        [Ink.Alert] = new(new Color(StandardColor.White), new Color(StandardColor.Maroon), TextStyle.Bold),
    });

    /// <summary>No colour codes at all: weights and reversal only.</summary>
    public static Theme Monochrome { get; } = new(new()
    {
        [Ink.Plain] = Bare(TextStyle.None),
        [Ink.Faint] = Bare(TextStyle.Faint),
        [Ink.Strong] = Bare(TextStyle.Bold),
        [Ink.Key] = Bare(TextStyle.Bold),
        [Ink.Live] = Bare(TextStyle.Bold),
        [Ink.Range] = Bare(TextStyle.None),
        [Ink.Mark] = Bare(TextStyle.Bold | TextStyle.Underline),
        [Ink.Alert] = Bare(TextStyle.Bold | TextStyle.Reverse),
    });

    public Attribute this[Ink ink] => _looks[ink];

    /// <summary>Monochrome when NO_COLOR is set to anything but nothing.</summary>
    public static Theme For(string? noColor) => string.IsNullOrEmpty(noColor) ? Colours : Monochrome;

    private static Attribute On(StandardColor colour, TextStyle style) => new(new Color(colour), new Color(StandardColor.Black), style);

    private static Attribute Bare(TextStyle style) => new(Color.None, Color.None, style);
}
