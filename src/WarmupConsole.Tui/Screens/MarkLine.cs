using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>
/// The line in which a mark is typed. It opens with the first letter, or on a pin, and what the mark refers to is taken then; it closes
/// when kept or when the last letter is deleted. A value: each method returns the next one.
/// </summary>
public sealed record MarkLine(string Text, MarkAnchor? Anchor)
{
    /// <summary>Longer text is no mark but a letter; what exceeds this is not taken.</summary>
    public const int MostCharacters = 200;

    /// <summary>The pin that these words are for, or null for a mark of its own.</summary>
    public int? Pin { get; init; }

    public static MarkLine Closed { get; } = new("", null);

    public bool IsOpen => Anchor is not null;

    /// <summary>Open and empty, at the moment of a pin.</summary>
    public static MarkLine For(LiveMark pin) => new("", pin.Anchor) { Pin = pin.Id };

    /// <summary>Adds what was typed or pasted; opens the line, at this anchor, if it is closed and there is something to write.</summary>
    public MarkLine Type(string typed, MarkAnchor anchor)
    {
        string text = string.Concat(CellText.Split(Text + OneLine(typed)).Take(MostCharacters));
        return text.Length == 0 && Pin is null ? Closed : this with { Text = text, Anchor = Anchor ?? anchor };
    }

    /// <summary>Takes the last character back, and closes the line when it was the only one.</summary>
    public MarkLine Erase()
    {
        string text = string.Concat(CellText.Split(Text).SkipLast(1));
        return text.Length == 0 ? Closed : this with { Text = text };
    }

    /// <summary>The mark to keep, or null when there is nothing but blanks.</summary>
    public (string Raw, MarkAnchor Anchor)? Kept => Anchor is { } anchor && Text.Trim() is { Length: > 0 } raw ? (raw, anchor) : null;

    private static string OneLine(string typed) => typed.ReplaceLineEndings(" ").Replace('\t', ' ');
}
