namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>A part of a score as one line is sung from it: the whole part, or one voice of a staff that several share.</summary>
/// <param name="Part">The part of the score.</param>
/// <param name="Key">What a mapping file calls the part: its id, or its place ("#3") where the id is missing or used twice.</param>
/// <param name="Voice">The voice, "1", or "2/1" for that of the second staff where several staves have one of that number; empty for the whole part.</param>
/// <param name="Notes">Its notes, in the order of the file.</param>
public sealed record ScoreLine(ScorePart Part, string Key, string Voice, IReadOnlyList<PartNote> Notes)
{
    private const int MostVoices = 32;

    /// <summary>As the score calls it; its key where it has no name.</summary>
    public string Name => Part.Name.Length > 0 ? Part.Name : Key;

    /// <summary>The name, with the voice where it is one of several.</summary>
    public string Title => Voice.Length == 0 ? Name : $"{Name}, voice {Voice}";

    /// <summary>Every part as a whole, in the order of the score.</summary>
    public static IReadOnlyList<ScoreLine> Whole(Score score)
    {
        ArgumentNullException.ThrowIfNull(score);
        HashSet<string> once = [.. score.Parts.CountBy(part => part.Id).Where(id => id is { Key.Length: > 0, Value: 1 }).Select(id => id.Key)];
        return [.. score.Parts.Select((part, index) => new ScoreLine(part, once.Contains(part.Id) ? part.Id : $"#{index + 1}", "", part.Notes))];
    }

    /// <summary>The voices of a whole part that has several, in the order of its staves; none for a plain part, or one with more than any staff shows.</summary>
    public IReadOnlyList<ScoreLine> Voices()
    {
        if (Voice.Length > 0 || Part.Voices.Count is < 2 or > MostVoices)
        {
            return [];
        }

        Dictionary<string, int> times = Part.Voices.CountBy(voice => voice.Voice).ToDictionary();
        ILookup<(int, string), PartNote> notes = Notes.ToLookup(note => (note.Staff, note.Voice));
        return [.. Part.Voices.Select(voice => this with { Voice = times[voice.Voice] > 1 ? $"{voice.Staff}/{voice.Voice}" : voice.Voice, Notes = [.. notes[voice]] })];
    }
}
