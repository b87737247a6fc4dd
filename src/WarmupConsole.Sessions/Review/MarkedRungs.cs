using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>Brings marks and rungs together: which rung a mark means, which pitches, and how often each was sung and marked.</summary>
internal sealed class MarkedRungs
{
    private readonly Choir choir;
    private readonly IReadOnlyList<SungRung> begun;
    private readonly Dictionary<int, List<ReviewMark>> byRung = [];

    internal MarkedRungs(Choir choir, IReadOnlyList<SungRung> begun, IReadOnlyList<LoggedMark> marks)
    {
        (this.choir, this.begun) = (choir, begun);
        Marks = [.. marks.SelectMany(Assign)];
        int[] counted = [.. Enumerable.Range(0, begun.Count).Where(index => begun[index].Whole || byRung.ContainsKey(index))];
        Sung = [.. counted.Select(index => begun[index])];
        Counts = [.. choir.Parts.SelectMany(part => CountsOf(part.Id, counted))];
    }

    internal IReadOnlyList<ReviewMark> Marks { get; }

    internal IReadOnlyList<SungRung> Sung { get; }

    internal IReadOnlyList<PitchCount> Counts { get; }

    private IEnumerable<ReviewMark> Assign(LoggedMark mark)
    {
        int index = RungOf(mark);
        SungRung? rung = index < 0 ? null : begun[index];
        List<ReviewMark> made = [.. PartsOf(mark, rung).Select(part => Of(mark, part, rung))];
        if (index >= 0)
        {
            byRung.TryAdd(index, []);
            byRung[index].AddRange(made);
        }

        return made;
    }

    private static IReadOnlyList<string> PartsOf(LoggedMark mark, SungRung? rung)
    {
        IReadOnlyList<string> parts = mark.Made switch
        {
            { Kind: null } => [],
            { Parts.Count: > 0 } made => made.Parts,
            _ => [.. rung?.Pitches.Keys ?? []],
        };
        return parts.Count > 0 ? parts : [""];
    }

    private ReviewMark Of(LoggedMark mark, string part, SungRung? rung)
    {
        Pitch? named = KeyOf(mark.Made.Key);
        bool isAnotherKey = mark.Made.KeyNamed && rung is not null && named is not null && !IsSameKey(rung.Tonic, named.Value);
        Pitch? key = isAnotherKey ? named : rung?.Tonic ?? named;
        bool isPraise = mark.Made.Kind is { } kind && MarkKindData.Find(choir, kind) is { IsPraise: true };
        IReadOnlyList<Pitch> pitches = part.Length == 0 ? [] : MarkedPitches.Of(mark.Made, part, rung, choir);
        return new(mark.Made.Id, part, mark.Made.Kind, isPraise, key, pitches, mark.Made.Place, mark.Made.Raw, mark.Step, rung?.Rung ?? mark.Rung, mark.At)
        {
            Strength = mark.Made.Strength,
            IsPitchNamed = mark.Made.Pitch is not null,
        };
    }

    /// <summary>The rung the mark was pinned to, or, when another key was named, the last one before it in that key; −1 when none was sung.</summary>
    private int RungOf(LoggedMark mark)
    {
        bool IsInStep(int index) => begun[index].Step == mark.Step;
        int[] before = [.. Enumerable.Range(0, begun.Count).Where(IsInStep).OrderBy(index => index < mark.RungsBefore ? 0 : 1)
            .ThenBy(index => index < mark.RungsBefore ? -index : index)];
        if (mark.Made.KeyNamed && !mark.WasMoved && KeyOf(mark.Made.Key) is { } key)
        {
            return before.Where(index => IsSameKey(begun[index].Tonic, key)).Append(-1).First();
        }

        return before.Where(index => begun[index].Rung == mark.Rung).Append(-1).First();
    }

    private IEnumerable<PitchCount> CountsOf(string part, int[] counted) =>
        from index in counted
        where begun[index].Pitches.ContainsKey(part)
        from pitch in begun[index].Pitches[part]
        group index by pitch.Midi into sung
        orderby sung.Key descending
        select new PitchCount(part, sung.Key, sung.Count(index => IsMarked(index, part, sung.Key)), sung.Count());

    private bool IsMarked(int index, string part, int midi) => byRung.TryGetValue(index, out List<ReviewMark>? marks)
        && marks.Any(mark => mark.Part == part && !mark.IsPraise && mark.Pitches.Any(pitch => pitch.Midi == midi));

    private static bool IsSameKey(Pitch a, Pitch b) => (a.Midi - b.Midi) % 12 == 0;

    private static Pitch? KeyOf(string? ascii) =>
        Pitch.TryParse(ascii, out Pitch pitch) || Pitch.TryParse(ascii + "4", out pitch) ? pitch : null;
}
