namespace WarmupConsole.Sessions.Marks;

/// <summary>The beginning of a clause: who, how much, and what.</summary>
internal sealed class MarkHead
{
    private static readonly string[] Verbs =
        ["are", "is", "were", "was", "go", "went", "get", "got", "getting", "sound", "sounds", "sounded", "sounding", "sing", "sang", "come", "came"];

    private static readonly string[] Adverbs = ["still", "again", "always", "often", "sometimes", "now"];

    private readonly WordCursor cursor;
    private readonly MarkVocabulary vocabulary;
    private readonly List<string> named = [];
    private readonly List<string> asides = [];
    private readonly Stack<(int Position, int Count)> taken = [];

    private MarkHead(WordCursor cursor, MarkVocabulary vocabulary) => (this.cursor, this.vocabulary) = (cursor, vocabulary);

    /// <summary>Ids of the parts as they were named.</summary>
    internal IReadOnlyList<string> Named => named;

    /// <summary>Null when none follows: then the cursor stands behind the parts.</summary>
    internal MarkKind? Kind { get; private set; }

    internal string Strength { get; private set; } = "";

    /// <summary>"still" in "altos still flat".</summary>
    internal IReadOnlyList<string> Asides => asides;

    internal static MarkHead Read(WordCursor cursor, MarkVocabulary vocabulary)
    {
        MarkHead head = new(cursor, vocabulary);
        head.ReadParts();
        head.ReadKind();
        return head;
    }

    private void ReadParts()
    {
        int before = cursor.Position;

        // In "a bit flat" the a names no altos.
        while (!StrengthData.Book.TryTake(cursor, out _))
        {
            cursor.TryTake("the");
            if (!vocabulary.TryTakeParts(cursor, out IReadOnlyList<string> ids))
            {
                break;
            }

            taken.Push((before, named.Count));
            named.AddRange(ids);
            before = cursor.Position;
        }

        cursor.Position = before;
    }

    private void ReadKind()
    {
        int before = cursor.Position;
        Kind = KindHere();
        while (Kind is null && TryFiller())
        {
            Kind = KindHere();
        }

        if (Kind is null)
        {
            (cursor.Position, Strength) = (before, "");
            asides.Clear();
            Kind = LastPartAsKind();
        }
        else if (named.Count == 0)
        {
            ReadPartsAfter();
        }
    }

    private MarkKind? KindHere() => vocabulary.TryTakeKind(cursor, out MarkKind kind) ? kind : null;

    private bool TryFiller()
    {
        if (Strength.Length == 0 && StrengthData.Book.TryTake(cursor, out string strength))
        {
            Strength = strength;
            return true;
        }

        string word = cursor.Next;
        bool isAside = cursor.TryTake(Adverbs);
        asides.AddRange(isAside ? [word] : []);
        return isAside || cursor.TryTake(Verbs);
    }

    /// <summary>In "s s" the second letter is no further part: it is what the sopranos were.</summary>
    private MarkKind? LastPartAsKind()
    {
        if (taken.Count < 2)
        {
            return null;
        }

        int end = cursor.Position;
        (int position, int count) = taken.Peek();
        cursor.Position = position;
        if (KindHere() is { } kind)
        {
            named.RemoveRange(count, named.Count - count);
            return kind;
        }

        cursor.Position = end;
        return null;
    }

    /// <summary>"flat altos" is understood as well; a single letter is not, since "flat a whole tone" names no altos.</summary>
    private void ReadPartsAfter()
    {
        while (cursor.Next.Length > 2 && cursor.Next != "the" && vocabulary.TryTakeParts(cursor, out IReadOnlyList<string> ids))
        {
            named.AddRange(ids);
        }
    }
}
