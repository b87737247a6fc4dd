using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Understands what a director types in a hurry: part first, then kind, then where. Never refuses.</summary>
/// <remarks>
/// "a f", "altos a bit flat in E", "tenors and basses sharp at Ab3", "women breathy coming down". A key counts only after "in", a pitch only
/// after "at" or "on". Without a part everyone is meant; without a kind the whole line is a free note. A line may hold several marks:
/// "s f, a s" is two, and so is "altos flat and late". Words left over are kept in the place.
/// </remarks>
public static class MarkGrammar
{
    /// <summary>Reads one line into at least one mark; the raw text is always kept, and no text whatever makes it throw.</summary>
    public static IReadOnlyList<MarkContent> Parse(string raw, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(raw);
        ArgumentNullException.ThrowIfNull(choir);
        MarkVocabulary vocabulary = new(choir);
        IReadOnlyList<ReadMark> marks = new LineReader(choir, vocabulary).Read(vocabulary.Clauses(MarkText.Tokens(raw)));
        return marks.Count == 0
            ? [new(raw, [], null, null, null, "")]
            : [.. marks.Select(mark => new MarkContent(raw, vocabulary.Canonical(mark.Named), mark.Kind.Id, mark.Tail.Key, mark.Tail.Pitch, mark.Tail.Place) { Strength = mark.Strength })];
    }
}
