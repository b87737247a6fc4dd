using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>What changes for the parts in the next rung; to be said in the rung before it.</summary>
/// <param name="Rung">Index of the rung in which it is said, from 0.</param>
/// <param name="Enter">Parts that rest in it and sing in the next one.</param>
/// <param name="Leave">Parts that sing in it and rest in the next one.</param>
/// <param name="ChangeOctave">Parts that sing in both, in different octaves.</param>
/// <param name="Sentence">"In A♭ the altos rest, the tenors sing."</param>
public sealed record LadderAnnouncement(
    int Rung,
    IReadOnlyList<Part> Enter,
    IReadOnlyList<Part> Leave,
    IReadOnlyList<Part> ChangeOctave,
    string Sentence)
{
    /// <summary>All announcements of a ladder, in order.</summary>
    public static IReadOnlyList<LadderAnnouncement> In(IReadOnlyList<Rung> rungs, NoteNaming notes) =>
        [.. Enumerable.Range(0, rungs.Count).Select(index => Ahead(rungs, index, notes)).OfType<LadderAnnouncement>()];

    /// <summary>What is to be said in a rung about the next one; null at the end of the ladder and where nothing changes.</summary>
    public static LadderAnnouncement? Ahead(IReadOnlyList<Rung> rungs, int index, NoteNaming notes)
    {
        if (index < 0 || index + 1 >= rungs.Count)
        {
            return null;
        }

        (RungPart Now, RungPart Next)[] changes = [.. rungs[index].Parts.Zip(rungs[index + 1].Parts)
            .Where(pair => pair.First.Sings != pair.Second.Sings || (pair.First.Sings && pair.First.Octaves != pair.Second.Octaves))];
        return changes.Length == 0 ? null : new(
            index,
            [.. changes.Where(change => !change.Now.Sings).Select(change => change.Next.Part)],
            [.. changes.Where(change => !change.Next.Sings).Select(change => change.Now.Part)],
            [.. changes.Where(change => change.Now.Sings && change.Next.Sings).Select(change => change.Next.Part)],
            $"In {notes.WriteName(rungs[index + 1].Tonic)} {string.Join(", ", changes.Select(change => Words(change.Next)))}.");
    }

    private static string Words(RungPart next) => $"{PartPlural.Of(next.Part)} {(next.Sings, next.OctaveShift) switch
    {
        (false, _) => "rest",
        (true, < 0) => "take the lower octave",
        (true, > 0) => "take the higher octave",
        _ => "sing",
    }}";
}
