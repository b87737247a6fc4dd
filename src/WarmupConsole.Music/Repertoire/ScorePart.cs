namespace WarmupConsole.Music.Repertoire;

/// <summary>One part of a score.</summary>
/// <param name="Id">As the file names it; may be empty.</param>
/// <param name="Name">As it is printed, on one line; empty when the score names it nowhere.</param>
/// <param name="Notes">In the order of the file.</param>
/// <param name="BarNumbers">The printed numbers of its bars.</param>
/// <param name="Keys">In order; empty when none is written.</param>
/// <param name="Clefs">The first clef of each staff, such as "G2", "F4" or "G2-8" (an octave lower).</param>
/// <param name="CueNotes">Cue notes that were left out: they are silent.</param>
/// <param name="UnpitchedNotes">Notes without pitch, such as those of a speaking choir.</param>
public sealed record ScorePart(
    string Id,
    string Name,
    IReadOnlyList<PartNote> Notes,
    IReadOnlyList<string> BarNumbers,
    IReadOnlyList<KeyChange> Keys,
    IReadOnlyList<string> Clefs,
    int CueNotes,
    int UnpitchedNotes)
{
    /// <summary>Its staves and voices in the order in which they first come; one for a plain part.</summary>
    public IReadOnlyList<(int Staff, string Voice)> Voices { get; } = [.. Notes.Select(note => (note.Staff, note.Voice)).Distinct().OrderBy(voice => voice.Staff)];

    /// <summary>The key at a bar: the last one written before or in it; null when none is.</summary>
    public KeyChange? KeyAt(int bar) => Keys.LastOrDefault(key => key.Bar <= bar);
}
