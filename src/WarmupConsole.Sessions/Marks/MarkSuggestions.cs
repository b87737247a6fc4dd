using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Whole marks that the typed letters may be on their way to: of this choir's parts and kinds, what was marked often in this session first.</summary>
public static class MarkSuggestions
{
    private const int Most = 5;

    /// <summary>The likeliest first, at most five; none for an empty line, and none once more was typed than who and what.</summary>
    /// <param name="typed">The line so far.</param>
    /// <param name="choir">Whose parts and kinds there are.</param>
    /// <param name="marks">The marks of this session.</param>
    public static IReadOnlyList<string> For(string typed, Choir choir, IReadOnlyList<LiveMark> marks)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(marks);
        string[] words = [.. MarkText.Words(typed)];
        if (words.Length == 0)
        {
            return [];
        }

        Dictionary<string, int> said = Said(choir, marks);
        ILookup<string, LiveMark> byKind = marks.Where(mark => !mark.Content.IsFreeNote).ToLookup(mark => mark.Content.KindId!);
        IEnumerable<string> again = said.Keys.Where(phrase => phrase.StartsWith(string.Join(' ', words), StringComparison.Ordinal));
        IEnumerable<string> others = MarkKindData.Usual.Concat(choir.OwnMarkKinds)
            .OrderByDescending(kind => byKind[kind.Id].Count())
            .SelectMany(kind => Whos(choir).Where(who => Leads(words, who, kind)).Select(who => $"{who.Words} {kind.Words}".Trim()));
        return [.. again.Concat(others).Distinct().OrderByDescending(phrase => said.GetValueOrDefault(phrase)).Take(Most)];
    }

    /// <summary>What was said in this session without its place, and how often.</summary>
    private static Dictionary<string, int> Said(Choir choir, IReadOnlyList<LiveMark> marks) => marks
        .Where(mark => !mark.Content.IsFreeNote)
        .CountBy(mark => MarkWords.Sentence(choir, mark.Content.PartIds, MarkWords.What(choir, mark.Content.KindId!, ""), ""))
        .ToDictionary();

    /// <summary>Every part by its plural and its letters, every group by its name, and nobody in particular.</summary>
    private static IEnumerable<(string Words, IEnumerable<string> Short)> Whos(Choir choir) =>
    [
        .. choir.Parts.Select(part => (PartNames.Plural(part), part.Letters.Select(letter => letter.ToLowerInvariant()))),
        .. choir.Parts.SelectMany(part => part.Groups).Distinct().Select(group => (MarkText.Clean(group).ToLowerInvariant(), Enumerable.Empty<string>())),
        ("", []),
    ];

    private static bool Leads(string[] words, (string Words, IEnumerable<string> Short) who, MarkKind kind)
    {
        if (who.Words.Length == 0)
        {
            return Begins(kind, string.Join(' ', words));
        }

        bool isShort = who.Short.Contains(words[0]);
        int own = isShort ? 1 : Math.Min(words.Length, who.Words.Split(' ').Length);
        return (isShort || who.Words.StartsWith(string.Join(' ', words[..own]), StringComparison.Ordinal))
            && Begins(kind, string.Join(' ', words[own..]));
    }

    private static bool Begins(MarkKind kind, string what) =>
        kind.Words.StartsWith(what, StringComparison.OrdinalIgnoreCase) || kind.Spellings.Any(spelling => spelling.Equals(what, StringComparison.OrdinalIgnoreCase));
}
