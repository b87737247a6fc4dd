using System.Text;
using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Tui.Presentation;

/// <summary>What is sung as two lines of text, degrees above syllables, in columns; a long pattern goes on in a second pair.</summary>
/// <param name="Degrees">"1  2  3  ♭3"; a dot is a rest.</param>
/// <param name="Syllables">"noo –  –"; a dash carries the last one on.</param>
public sealed record PatternLine(string Degrees, string Syllables)
{
    private const string Carried = "–";
    private const string Rest = "·";

    /// <summary>Cuts a pattern into as many pairs of lines as the columns ask for.</summary>
    public static IReadOnlyList<PatternLine> Layout(Pattern pattern, int columns, int gap)
    {
        List<PatternLine> lines = [];
        (StringBuilder degrees, StringBuilder syllables) = (new(), new());
        int used = 0;
        foreach (PatternNote note in pattern.Notes)
        {
            (string degree, string syllable) = Texts(note);
            int width = Math.Max(CellText.Columns(degree), CellText.Columns(syllable)) + gap;
            if (used > 0 && used + width - gap > columns)
            {
                lines.Add(new(degrees.ToString().TrimEnd(), syllables.ToString().TrimEnd()));
                (used, degrees, syllables) = (0, new(), new());
            }

            degrees.Append(Padded(degree, width));
            syllables.Append(Padded(syllable, width));
            used += width;
        }

        return [.. lines, new(degrees.ToString().TrimEnd(), syllables.ToString().TrimEnd())];
    }

    private static (string Degree, string Syllable) Texts(PatternNote note) => note.Degree is { } degree
        ? (MusicWords.Degree(degree), note.Syllable is { } syllable ? CellText.Clean(syllable.Text) : Carried)
        : (Rest, "");

    private static string Padded(string text, int columns) => text + new string(' ', Math.Max(0, columns - CellText.Columns(text)));
}
