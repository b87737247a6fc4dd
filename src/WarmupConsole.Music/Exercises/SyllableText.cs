using WarmupConsole.Music.Text;

namespace WarmupConsole.Music.Exercises;

/// <summary>Syllables in and out: "noo/u ~ ~ mah/a"; one for each sounding note, or a single one for all.</summary>
public static class SyllableText
{
    private const string Carry = "~";

    /// <summary>Gives the sounding notes of a pattern their syllables; a carried note keeps none of its own.</summary>
    public static Parsed<Pattern> Apply(Pattern pattern, string text)
    {
        List<Word> words = Word.Split(text);
        List<TextError> errors = [.. words.Where(word => !IsSyllable(word.Text)).Select(word => word.Error(MusicTextErrors.Syllable(word.Text)))];
        int notes = pattern.Notes.Count(note => note.Degree is not null);
        if (words.Count == 0)
        {
            errors.Add(new(0, text.Length, MusicTextErrors.NoSyllable));
        }
        else if (words[0].Text == Carry)
        {
            errors.Add(words[0].Error(MusicTextErrors.CarriesNothing));
        }
        else if (words.Count != 1 && words.Count != notes)
        {
            errors.Add(new(0, text.Length, MusicTextErrors.SyllableCount(words.Count, notes)));
        }

        return errors.Count == 0 ? ParsedFactory.Value(Attach(pattern, words)) : ParsedFactory.Errors<Pattern>(errors);
    }

    /// <summary>The syllables of a pattern as a text that <see cref="Apply"/> reads back; empty when it has none.</summary>
    public static string Write(Pattern pattern)
    {
        List<Syllable?> syllables = [.. pattern.Notes.Where(note => note.Degree is not null).Select(note => note.Syllable)];
        return syllables.TrueForAll(syllable => syllable is null)
            ? ""
            : string.Join(' ', syllables.Skip(1).All(syllable => syllable is null) ? [Write(syllables[0])] : syllables.Select(Write));
    }

    private static string Write(Syllable? syllable) => syllable switch
    {
        null => Carry,
        { Vowel: "" } => syllable.Text,
        _ => $"{syllable.Text}/{syllable.Vowel}",
    };

    private static bool IsSyllable(string word)
    {
        int slash = word.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 || (slash > 0 && slash == word.LastIndexOf('/') && slash < word.Length - 1);
    }

    private static Pattern Attach(Pattern pattern, List<Word> words)
    {
        int next = 0;
        List<PatternNote> notes = [];
        foreach (PatternNote note in pattern.Notes)
        {
            bool takes = note.Degree is not null && next < words.Count;
            notes.Add(note with { Syllable = takes ? Read(words[next].Text) : null });
            next += takes ? 1 : 0;
        }

        return new(notes);
    }

    private static Syllable? Read(string word)
    {
        string[] halves = word.Split('/');
        return word == Carry ? null : new(halves[0], halves.Length == 2 ? halves[1] : "");
    }
}
