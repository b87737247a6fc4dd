using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Music.Exercises;

/// <summary>Patterns in and out: "1:1/2 2:1/2 3 -:1". Bar lines "|" mean nothing and are not kept.</summary>
public static class PatternText
{
    /// <summary>The most notes and rests in one pattern.</summary>
    public const int MostNotes = 200;

    private const string Rest = "-";
    private const string BarLine = "|";

    /// <summary>Reads a pattern without syllables; all errors at once, each at its place.</summary>
    /// <param name="text">Notes separated by spaces, each <c>degree[:beats]</c>; without beats, one.</param>
    /// <param name="mode">The mode that sol-fa syllables are understood in; numbers do not ask for it.</param>
    public static Parsed<Pattern> Parse(string text, Mode mode = Mode.Major)
    {
        List<TextError> errors = [];
        List<PatternNote> notes = [];
        foreach (Word word in Word.Split(text).Where(word => word.Text != BarLine))
        {
            notes.Add(Note(word, mode, errors));
        }

        if (errors.Count == 0)
        {
            CheckWhole(text, notes, errors);
        }

        return errors.Count == 0 ? ParsedFactory.Value(new Pattern(notes)) : ParsedFactory.Errors<Pattern>(errors);
    }

    /// <summary>With numbers; reads back as the same notes (syllables are <see cref="SyllableText"/>'s).</summary>
    public static string Write(Pattern pattern) => string.Join(' ', pattern.Notes.Select(Write));

    private static string Write(PatternNote note)
    {
        string degree = note.Degree is Degree sounding ? DegreeText.Write(sounding) : Rest;
        return note.Length == Beats.FromBeats(1) ? degree : $"{degree}:{BeatsText.Write(note.Length)}";
    }

    private static PatternNote Note(Word word, Mode mode, List<TextError> errors)
    {
        (Word head, Word? tail) = word.AtColon();
        Beats length = Beats.FromBeats(1);
        if (tail is Word beats && !BeatsText.TryParse(beats.Text, out length))
        {
            errors.Add(beats.Error(MusicTextErrors.Beats(beats.Text)));
        }

        if (head.Text == Rest)
        {
            return new(null, length, null);
        }

        if (!DegreeText.TryParse(head.Text, mode, out Degree degree))
        {
            errors.Add(head.Text.Length == 0 ? word.Error(MusicTextErrors.PatternWord(word.Text)) : head.Error(MusicTextErrors.Degree(head.Text)));
        }

        return new(degree, length, null);
    }

    private static void CheckWhole(string text, List<PatternNote> notes, List<TextError> errors)
    {
        if (notes.Count > MostNotes)
        {
            errors.Add(new(0, text.Length, MusicTextErrors.TooManyNotes(MostNotes)));
        }
        else if (notes.TrueForAll(note => note.Degree is null))
        {
            errors.Add(new(0, text.Length, MusicTextErrors.EmptyPattern));
        }
    }
}
