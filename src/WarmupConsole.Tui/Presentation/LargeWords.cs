using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Tui.Presentation;

/// <summary>What is sung in letters for reading from a metre away, the degrees above: on large screens, as the key is larger still.</summary>
internal static class LargeWords
{
    private const int LeastHeight = 36;
    private const int RowsPerScale = 30;
    private const int Gap = 2;
    private const string Carried = "–";
    private const string Rest = "·";

    /// <summary>Null where the screen is too small, or a letter has no large form: the plain text serves then.</summary>
    internal static Block? For(Pattern pattern, int width, int height)
    {
        (string Degree, string Syllable)[] notes = [.. pattern.Notes.Select(Texts)];
        if (height < LeastHeight || notes.Any(note => !BlockLetters.CanDraw(note.Degree + note.Syllable)))
        {
            return null;
        }

        int scale = height / RowsPerScale;
        while (scale > 0 && Columns(notes, scale) > width)
        {
            scale--;
        }

        return scale == 0 ? null : new(DegreeRows(scale) + BlockLetters.Rows(scale), pane => Draw(pane, notes, scale));
    }

    private static (string Degree, string Syllable) Texts(PatternNote note) => note.Degree is { } degree
        ? (MusicWords.Degree(degree), note.Syllable is { } syllable ? CellText.Clean(syllable.Text).ToUpperInvariant() : Carried)
        : (Rest, "");

    /// <summary>Degrees are large only where the syllables are larger.</summary>
    private static int DegreeRows(int scale) => scale > 1 ? BlockLetters.Rows(1) + 1 : 1;

    private static int Columns(IEnumerable<(string Degree, string Syllable)> notes, int scale) => notes.Sum(note => Columns(note, scale)) - (Gap * scale);

    private static int Columns((string Degree, string Syllable) note, int scale) =>
        Math.Max(scale > 1 ? BlockLetters.Columns(note.Degree, 1) : note.Degree.Length, BlockLetters.Columns(note.Syllable, scale)) + (Gap * scale);

    private static void Draw(Pane pane, IEnumerable<(string Degree, string Syllable)> notes, int scale)
    {
        int x = 0;
        int above = DegreeRows(scale);
        foreach ((string Degree, string Syllable) note in notes)
        {
            int columns = Columns(note, scale);
            BlockLetters.Draw(pane.Sub(x, 0, columns, Math.Max(1, above - 1)), note.Degree, Ink.Plain);
            BlockLetters.Draw(pane.Sub(x, above, columns, BlockLetters.Rows(scale)), note.Syllable, Ink.Strong);
            x += columns;
        }
    }
}
