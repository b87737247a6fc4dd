using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>The words of one choir: its parts, groups and kinds of mark.</summary>
internal sealed class MarkVocabulary
{
    private readonly PhraseBook<IReadOnlyList<string>> parts = new();
    private readonly PhraseBook<MarkKind> kinds = new();
    private readonly Dictionary<char, string> letters = [];
    private readonly Choir choir;

    internal MarkVocabulary(Choir choir)
    {
        this.choir = choir;
        foreach (string everyone in PartNames.Everyone)
        {
            parts.Add(everyone, [.. choir.Parts.Select(part => part.Id)]);
        }

        foreach (Part part in choir.Parts)
        {
            AddPart(part);
        }

        foreach (MarkKind kind in MarkKindData.Of(choir))
        {
            AddKind(kind);
        }
    }

    /// <summary>The line cut at commas and at "and", except within a name.</summary>
    internal IEnumerable<WordCursor> Clauses(IReadOnlyList<string> tokens)
    {
        List<string> clause = [];
        for (WordCursor all = new(tokens); all.Left > 0;)
        {
            int from = all.Position;
            int words = WordsOfName(all);
            if (words <= 1 && all.TryTake(MarkText.ClauseEnd, "and", "but"))
            {
                yield return new([.. clause]);
                clause.Clear();
                continue;
            }

            all.Position = from + Math.Max(1, words);
            clause.AddRange(tokens.Skip(from).Take(all.Position - from));
        }

        yield return new(clause);
    }

    internal bool TryTakeKind(WordCursor cursor, out MarkKind kind) => kinds.TryTake(cursor, out kind);

    /// <summary>One part or group, or, as the first word of a mark, several by their letters run together ("sa"); later "at" and "st" mean something else.</summary>
    internal bool TryTakeParts(WordCursor cursor, out IReadOnlyList<string> ids)
    {
        if (parts.TryTake(cursor, out ids))
        {
            return true;
        }

        string word = cursor.Next;
        bool isLetters = cursor.Position == 0 && word.Length > 1 && word.All(letters.ContainsKey);
        ids = isLetters ? [.. word.Select(letter => letters[letter])] : [];
        cursor.Position += isLetters ? 1 : 0;
        return isLetters;
    }

    /// <summary>True where, without any comma, another mark begins: "s f a s", "altos flat tenors late"; "flat a short time" is none.</summary>
    internal bool StartsMark(WordCursor cursor)
    {
        WordCursor ahead = cursor.Copy();
        bool isWord = ahead.Next.Length > 1;
        if (ahead.Position == 0 || !parts.TryTake(ahead, out _))
        {
            return false;
        }

        StrengthData.Book.TryTake(ahead, out _);
        bool isShort = ahead.Next.Length <= 2;
        return (isWord || isShort) && kinds.TryTake(ahead, out _);
    }

    /// <summary>In choir order without repetition, and empty when everyone is meant.</summary>
    internal IReadOnlyList<string> Canonical(IEnumerable<string> ids)
    {
        HashSet<string> meant = [.. ids];
        string[] ordered = [.. choir.Parts.Select(part => part.Id).Where(meant.Contains)];
        return ordered.Length == choir.Parts.Count ? [] : ordered;
    }

    /// <summary>How many of the next words are one name of a part or a kind; 0 when they are none.</summary>
    private int WordsOfName(WordCursor all)
    {
        WordCursor ahead = all.Copy();
        return parts.TryTake(ahead, out _) || kinds.TryTake(ahead, out _) ? ahead.Position - all.Position : 0;
    }

    private void AddPart(Part part)
    {
        foreach (string spelling in PartNames.Spellings(part))
        {
            parts.Merge(spelling, [part.Id], (old, added) => [.. old.Union(added)]);
            if (spelling.Length == 1)
            {
                letters.TryAdd(char.ToLowerInvariant(spelling[0]), part.Id);
            }
        }
    }

    private void AddKind(MarkKind kind)
    {
        kinds.Add(kind.Id, kind);
        kinds.Add(kind.Words, kind);
        foreach (string spelling in kind.Spellings)
        {
            kinds.Add(spelling, kind);
        }
    }
}
