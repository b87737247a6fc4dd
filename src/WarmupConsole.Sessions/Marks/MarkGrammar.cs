using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Understands what a director types in a hurry: part first, then kind, then where. Never refuses.</summary>
/// <remarks>
/// "a f", "altos flat in E", "tenors and basses sharp at Ab3", "women breathy coming down". A key counts only after "in", a pitch only
/// after "at" or "on". Without a part everyone is meant; without a kind the whole line is a free note. Words left over are kept in the place.
/// </remarks>
public static class MarkGrammar
{
    /// <summary>Reads one line; the raw text is always kept, and no text whatever makes it throw.</summary>
    public static MarkContent Parse(string raw, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(raw);
        ArgumentNullException.ThrowIfNull(choir);
        MarkVocabulary vocabulary = new(choir);
        WordCursor cursor = new(MarkText.TypedWords(raw));
        (List<string> named, MarkKind? kind) = ReadHead(cursor, vocabulary);
        if (kind is null)
        {
            return new(raw, [], null, null, null, "");
        }

        IReadOnlyList<string> parts = vocabulary.Canonical(named);
        MarkTail tail = new([.. vocabulary.Parts.Where(part => parts.Count == 0 || parts.Contains(part.Id))], choir.Notes);
        tail.Read(cursor);
        return new(raw, parts, kind.Id, tail.Key, tail.Pitch, tail.Place);
    }

    private static (List<string> Named, MarkKind? Kind) ReadHead(WordCursor cursor, MarkVocabulary vocabulary)
    {
        List<string> named = [];
        Stack<(int Position, int Count)> taken = [];
        while (true)
        {
            int before = cursor.Position;
            cursor.TryTake("and", "the");
            if (!vocabulary.TryTakeParts(cursor, out IReadOnlyList<string> ids))
            {
                cursor.Position = before;
                break;
            }

            taken.Push((before, named.Count));
            named.AddRange(ids);
        }

        cursor.TryTake("are", "is", "were", "was");
        return vocabulary.TryTakeKind(cursor, out MarkKind kind)
            ? (named.Count > 0 ? named : PartsAfter(cursor, vocabulary), kind)
            : (named, LastPartAsKind(cursor, vocabulary, named, taken));
    }

    /// <summary>In "s s" the second letter is no further part: it is what the sopranos were.</summary>
    private static MarkKind? LastPartAsKind(WordCursor cursor, MarkVocabulary vocabulary, List<string> named, Stack<(int Position, int Count)> taken)
    {
        if (taken.Count < 2)
        {
            return null;
        }

        (cursor.Position, int count) = taken.Pop();
        named.RemoveRange(count, named.Count - count);
        return vocabulary.TryTakeKind(cursor, out MarkKind kind) ? kind : null;
    }

    /// <summary>"flat altos" is understood as well; a single letter is not, since "flat a little" names no altos.</summary>
    private static List<string> PartsAfter(WordCursor cursor, MarkVocabulary vocabulary)
    {
        List<string> named = [];
        while (cursor.Next.Length > 2 && cursor.Next is not ("and" or "the") && vocabulary.TryTakeParts(cursor, out IReadOnlyList<string> ids))
        {
            named.AddRange(ids);
            int before = cursor.Position;
            cursor.Position = cursor.TryTake("and") && cursor.Next.Length <= 2 ? before : cursor.Position;
        }

        return named;
    }
}
