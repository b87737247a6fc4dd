using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Planning;

/// <summary>What a mark of the rehearsal asks of the next warm-ups.</summary>
public static class RehearsalNeeds
{
    /// <summary>What exercises can do about a kind of mark where no pitch was named. Our own choice, after what each purpose trains.</summary>
    private static readonly Dictionary<string, Purpose> ByKind = new()
    {
        ["flat"] = Purpose.RepeatedPitch,
        ["sharp"] = Purpose.RepeatedPitch,
        ["strained"] = Purpose.ClosedToOpenVowels,
        ["pressed"] = Purpose.ClosedToOpenVowels,
        ["breathy"] = Purpose.Sustained,
        ["short-of-breath"] = Purpose.Sustained,
        ["late"] = Purpose.Quick,
        ["early"] = Purpose.Slow,
        ["uneven"] = Purpose.Legato,
        ["scooping"] = Purpose.LeapFifth,
        ["dark"] = Purpose.EvenVowels,
        ["thin"] = Purpose.EvenVowels,
        ["vowel"] = Purpose.EvenVowels,
        ["blend"] = Purpose.Blend,
        ["tired"] = Purpose.Slow,
        ["hoarse"] = Purpose.Slow,
    };

    /// <summary>
    /// The fields of one need for each part named, as needs.yaml has them; none for praise, and where neither a pitch nor a kind that
    /// exercises help with was named. A kind that means too much effort goes with it: the pitch is to be spared then.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<(string Name, string Value)>> Of(RehearsalMarked mark, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(mark);
        ArgumentNullException.ThrowIfNull(choir);
        string kindOfEffort = mark.Kind is { } heard && MarkKindData.IsEffort(choir, heard) ? heard : "";
        (string, string)? what = mark switch
        {
            { Kind: "good" or "easy" } => null,
            { Pitch: { } midi } => ("pitch", KeySpelling.TonicFor(midi, Mode.Major).ToAscii()),
            { Kind: { } kind } when ByKind.TryGetValue(kind, out Purpose purpose) => ("purpose", PurposeData.Id(purpose)),
            _ => null,
        };
        IEnumerable<string> who = mark.Parts.Count == 0 ? [LadderSpec.Everyone] : mark.Parts;
        return what is { } asked ? [.. who.Select(part => Fields(part, asked, kindOfEffort, mark))] : [];
    }

    private static IReadOnlyList<(string Name, string Value)> Fields(string part, (string, string) what, string kind, RehearsalMarked mark) =>
        [.. new[] { ("part", part), what, ("kind", kind), ("piece", mark.Piece), ("bars", mark.Bars) }.Where(field => field.Item2.Length > 0)];
}
