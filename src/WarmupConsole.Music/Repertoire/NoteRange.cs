namespace WarmupConsole.Music.Repertoire;

/// <summary>
/// What a part, or a voice of it, sings: chord members and grace notes count, tied continuations count as notes, nothing is
/// repeated. Of several notes as low or as high, the first in the order of the file is kept.
/// </summary>
/// <param name="Lowest">The lowest note.</param>
/// <param name="Highest">The highest note.</param>
/// <param name="Count">How many notes there are.</param>
public sealed record NoteRange(PartNote Lowest, PartNote Highest, int Count)
{
    /// <summary>The range of notes; null when there are none.</summary>
    public static NoteRange? Of(IEnumerable<PartNote> notes)
    {
        (PartNote lowest, PartNote highest, int count) = (default, default, 0);
        foreach (PartNote note in notes)
        {
            lowest = count == 0 || note.Midi < lowest.Midi ? note : lowest;
            highest = count == 0 || note.Midi > highest.Midi ? note : highest;
            count++;
        }

        return count == 0 ? null : new(lowest, highest, count);
    }
}
