using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Parts as a director types them alone, in the words that a mark takes.</summary>
public static class TypedParts
{
    /// <summary>Their ids in choir order, empty for everyone; null when a word is none of the choir's.</summary>
    public static IReadOnlyList<string>? Find(string typed, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(choir);
        MarkVocabulary vocabulary = new(choir);
        WordCursor cursor = new(MarkText.Tokens(typed));
        List<string> named = [];
        while (cursor.Left > 0)
        {
            if (vocabulary.TryTakeParts(cursor, out IReadOnlyList<string> ids))
            {
                named.AddRange(ids);
            }
            else if (!cursor.TryTake("and", "the", "only", MarkText.ClauseEnd))
            {
                return null;
            }
        }

        return named.Count == 0 ? null : vocabulary.Canonical(named);
    }
}
