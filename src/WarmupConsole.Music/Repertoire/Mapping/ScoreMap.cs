using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Mapping;

/// <summary>Which part of the choir sings which line of a score: guessed, and then as the director says.</summary>
/// <param name="Lines">In the order of the score; a part that several sing from stands there voice by voice.</param>
public sealed record ScoreMap(IReadOnlyList<LineSinger> Lines)
{
    /// <summary>A voice with fewer of its part's notes than this is a divided moment, not a line of its own.</summary>
    private const double LeastShare = 0.15;

    /// <summary>The lines that the choir sings.</summary>
    public IReadOnlyList<LineSinger> Sung { get; } = [.. Lines.Where(line => line.Singer is not null)];

    /// <summary>
    /// Guesses from names, clefs and tessitura. Accompaniment is left out; a score in which nothing else is left, such as one for
    /// instruments alone, is taken whole.
    /// </summary>
    /// <param name="score">The score.</param>
    /// <param name="parts">The parts of the choir, from the highest to the lowest; at least one.</param>
    public static ScoreMap Guess(Score score, IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(score);
        ArgumentNullException.ThrowIfNull(parts);
        IReadOnlyList<ScoreLine> whole = ScoreLine.Whole(score);
        HashSet<ScoreLine> left = Accompaniment.Of(whole);
        (ScoreLine Whole, ScoreLine[] Sung)[] rows = [.. whole.Select(line => (line, left.Contains(line) ? [] : Divided(line)))];
        Dictionary<ScoreLine, LineSinger> singers = new SingerGuess(parts).For([.. rows.SelectMany(row => row.Sung)]).ToDictionary(singer => singer.Line);
        return new([.. rows.SelectMany(row => row.Sung.Length == 0 ? [new(row.Whole, null, MapGround.Accompaniment)] : row.Sung.Select(line => singers[line]))]);
    }

    /// <summary>With another singer for some lines, or none.</summary>
    public ScoreMap With(ScoreLine line, Part? singer) =>
        new([.. Lines.Select(known => known.Line == line ? new(line, singer, MapGround.Director) : known)]);

    /// <summary>The line itself, or its voices where the name speaks of several or nothing but voices could be meant.</summary>
    private static ScoreLine[] Divided(ScoreLine line)
    {
        ScoreLine[] voices = [.. line.Voices().Where(voice => voice.Notes.Count >= line.Notes.Count * LeastShare)];
        int named = NamedVoice.Of(line.Part.Name).Classes.Count;
        return voices.Length > 1 && named != 1 ? voices : [line];
    }
}
