namespace WarmupConsole.Sessions.Marks;

/// <summary>What phrases of one or more words mean; the longest phrase wins.</summary>
internal sealed class PhraseBook<T>
{
    private readonly Dictionary<string, T> meanings = new(StringComparer.Ordinal);
    private int longest = 1;

    internal void Add(string phrase, T meaning) => Merge(phrase, meaning, (old, _) => old);

    /// <summary>Adds a meaning, or joins it to the one that the phrase has already.</summary>
    internal void Merge(string phrase, T meaning, Func<T, T, T> join)
    {
        IReadOnlyList<string> words = MarkText.Words(phrase);
        string key = string.Join(' ', words);
        if (key.Length > 0)
        {
            meanings[key] = meanings.TryGetValue(key, out T? old) ? join(old, meaning) : meaning;
            longest = Math.Max(longest, words.Count);
        }
    }

    internal bool TryTake(WordCursor cursor, out T meaning)
    {
        for (int length = Math.Min(longest, cursor.Left); length > 0; length--)
        {
            if (meanings.TryGetValue(cursor.Peek(length), out T? found))
            {
                cursor.Position += length;
                meaning = found;
                return true;
            }
        }

        meaning = default!;
        return false;
    }
}
