using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>Reads the clauses of a line, one after the other, into marks.</summary>
internal sealed class LineReader(Choir choir, MarkVocabulary vocabulary)
{
    /// <summary>Spellings of kinds that before "the" name a place: "thin, over the break".</summary>
    private static readonly string[] Prepositions = ["over", "under", "behind", "ahead"];

    private readonly List<ReadMark> marks = [];

    /// <summary>Parts of clauses without a kind, which belong to the next one: "s, a: flat".</summary>
    private readonly List<(string Word, IReadOnlyList<string> Named)> waiting = [];

    /// <summary>Words before the first mark that mean nothing known.</summary>
    private readonly List<string> opening = [];

    internal IReadOnlyList<ReadMark> Read(IEnumerable<WordCursor> clauses)
    {
        foreach (WordCursor clause in clauses)
        {
            Read(clause);
        }

        // "altos flat, tenors too": those still waiting share the last mark; a letter alone is too little for that.
        foreach ((string word, IReadOnlyList<string> named) in marks.Count == 0 ? [] : waiting)
        {
            if (IsWord(word))
            {
                Share(named);
            }
            else
            {
                marks[^1].Tail.AddWords([word]);
            }
        }

        return marks;
    }

    private void Read(WordCursor clause)
    {
        while (clause.Left > 0)
        {
            if (!TryAnother(clause) && !TryMark(clause) && !TryParts(clause))
            {
                AddWords(clause);
            }
        }
    }

    /// <summary>"altos flat in C and D" is said of two keys, "on E4 and F4" of two pitches.</summary>
    private bool TryAnother(WordCursor clause)
    {
        if (marks.Count == 0 || MarkHead.Read(clause.Copy(), vocabulary) is { Kind: not null, Named.Count: > 0 })
        {
            return false;
        }

        MarkTail tail = NewTail(marks[^1].Named);
        bool isAnother = tail.TryAnother(clause, marks[^1].Tail);
        if (isAnother)
        {
            marks.Add(marks[^1] with { Tail = tail });
        }

        return isAnother;
    }

    private bool TryMark(WordCursor clause)
    {
        int start = clause.Position;
        bool isPlace = Prepositions.Contains(clause.Next);
        MarkHead head = MarkHead.Read(clause, vocabulary);
        string[] named = [.. waiting.SelectMany(parts => parts.Named), .. head.Named];
        bool goesOn = named.Length == 0 && marks.Count > 0;
        if (head.Kind is not { } kind || (named.Length == 0 && opening.Count > 0) || (goesOn && isPlace && clause.Next == "the"))
        {
            clause.Position = start;
            return false;
        }

        IReadOnlyList<string> parts = goesOn ? marks[^1].Named : named;
        MarkTail tail = NewTail(parts);
        tail.AddWords([.. opening, .. head.Asides]);
        tail.Read(clause);
        if (goesOn && marks[^1].Tail.IsEmpty)
        {
            // "flat and late in E": both were in E.
            marks[^1] = marks[^1] with { Tail = tail };
        }

        marks.Add(new(parts, kind, head.Strength.Length > 0 ? head.Strength : tail.Strength, tail));
        waiting.Clear();
        opening.Clear();
        return true;
    }

    /// <summary>Parts alone wait for their kind; with a place they share that of the last mark: "flat basses and tenors in D".</summary>
    private bool TryParts(WordCursor clause)
    {
        int start = clause.Position;
        string word = clause.Next;
        IReadOnlyList<string> named = MarkHead.Read(clause, vocabulary).Named;
        clause.TryTake("too", "also");
        if (named.Count > 0 && clause.Left == 0)
        {
            waiting.Add((word, named));
            return true;
        }

        if (named.Count > 0 && marks.Count > 0 && IsWord(word) && IsPlace(clause))
        {
            Share(named);
            marks[^1].Tail.Read(clause);
            return true;
        }

        clause.Position = start;
        return false;
    }

    private void Share(IReadOnlyList<string> named) => marks[^1] = marks[^1] with { Named = [.. marks[^1].Named, .. named] };

    private static bool IsWord(string word) => word.Length > 2;

    private bool IsPlace(WordCursor clause)
    {
        int start = clause.Position;
        MarkTail tail = NewTail([]);
        tail.Read(clause);
        bool isPlace = clause.Left == 0 && !tail.HasWords;
        clause.Position = start;
        return isPlace;
    }

    private void AddWords(WordCursor clause)
    {
        if (marks.Count == 0)
        {
            opening.AddRange(clause.TakeAll());
        }
        else if (IsWord(clause.Next) && MarkHead.Read(clause.Copy(), vocabulary).Named.Count > 0)
        {
            // Of other parts, in words that are not understood: no place of this mark.
            marks[^1].Tail.AddWords(clause.TakeAll());
        }
        else
        {
            int before = clause.Position;
            marks[^1].Tail.Read(clause);
            marks[^1].Tail.AddWords(clause.Position == before ? [clause.Take()] : []);
        }
    }

    private MarkTail NewTail(IReadOnlyList<string> named)
    {
        IReadOnlyList<string> parts = vocabulary.Canonical(named);
        Part[] meant = [.. choir.Parts.Where(part => parts.Count == 0 || parts.Contains(part.Id))];
        return new(meant, choir.Notes, vocabulary);
    }
}
