namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Which parts of a score no choir sings.</summary>
internal static class Accompaniment
{
    /// <summary>A part without words beside sung ones, with more of its notes in chords than this, is played.</summary>
    private const double MostChords = 0.3;

    private static bool HasWords(IEnumerable<PartNote> notes) => notes.Any(note => note.Lyric.Length > 0);

    /// <summary>The whole parts that are left out. Where nothing shows what is sung, neither a word nor a name, only what is named for keyboards; all is never left out.</summary>
    internal static HashSet<ScoreLine> Of(IReadOnlyList<ScoreLine> whole)
    {
        bool hasWords = whole.Any(line => HasWords(line.Notes));
        bool isKnown = hasWords || whole.Any(line => NamedVoice.Of(line.Part.Name) is { Classes.Count: > 0, IsInstrument: false });
        HashSet<ScoreLine> left = [.. whole.Where(line => isKnown ? Is(line, hasWords) : NamedVoice.Of(line.Part.Name).IsKeyboard)];
        return left.Count == whole.Count ? [] : left;
    }

    /// <param name="line">A whole part.</param>
    /// <param name="othersHaveWords">True when words stand under any part of the score.</param>
    private static bool Is(ScoreLine line, bool othersHaveWords)
    {
        if (NamedVoice.Of(line.Part.Name) is var name && name.IsInstrument)
        {
            return true;
        }

        if (name.Classes.Count > 0 || HasWords(line.Notes) || line.Notes.Count == 0)
        {
            return false;
        }

        bool hasStaves = line.Part.Voices.Select(voice => voice.Staff).Distinct().Count() > 1;
        int chords = line.Notes.Count(note => note.Is(NoteTraits.Chord));
        return hasStaves || (othersHaveWords && chords > line.Notes.Count * MostChords);
    }
}
