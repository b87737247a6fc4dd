using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Choirs;

/// <summary>
/// What differs this evening: heads per part, energy, colds. A part that is thin or tired goes less far beyond what is easy, one with
/// colds not at all; what is heard of it weighs less. The shares are our own, after common practice.
/// </summary>
public sealed record Tonight
{
    private const int Whole = 100;

    /// <summary>Nothing differs.</summary>
    public static Tonight AsUsual { get; } = new();

    public Energy Energy { get; init; }

    /// <summary>The parts that differ, in the order of the choir.</summary>
    public IReadOnlyList<PartTonight> Parts { get; init; } = [];

    public bool IsAsUsual => Energy == Energy.Usual && Parts.Count == 0;

    /// <summary>What a part goes tonight of its way from comfortable to extreme: 0–100 %.</summary>
    public int ReachPercentOf(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        PartTonight? one = Find(part.Id);
        int halvings = (one?.IsThin(part.Singers) == true ? 1 : 0) + (one?.IsTired == true || Energy == Energy.Low ? 1 : 0);
        return one?.HasColds == true ? 0 : Whole >> halvings;
    }

    /// <summary>What a mark of a part, and a key it sang, weighs in findings: 1 as usual, half for each of thin, tired and colds.</summary>
    public double WeightOf(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        PartTonight? one = Find(part.Id);
        bool[] less = [one?.IsThin(part.Singers) == true, one?.IsTired == true || Energy == Energy.Low, one?.HasColds == true];
        return 1.0 / (1 << less.Count(isSo => isSo));
    }

    /// <summary>The choir of this evening: without parts of which nobody came, and with what a part can sing at all narrowed. Never empty.</summary>
    public Choir Of(Choir usual)
    {
        ArgumentNullException.ThrowIfNull(usual);
        Part[] here = [.. usual.Parts.Where(part => Find(part.Id)?.Heads != 0)];
        return IsAsUsual ? usual : usual with { Parts = [.. (here.Length == 0 ? usual.Parts : here).Select(Narrowed)] };
    }

    /// <summary>Lists are compared by what they hold.</summary>
    public bool Equals(Tonight? other) => other is not null && Energy == other.Energy && Parts.SequenceEqual(other.Parts);

    public override int GetHashCode() => HashCode.Combine(Energy, Parts.Count);

    private PartTonight? Find(string id) => Parts.FirstOrDefault(part => part.PartId == id);

    private Part Narrowed(Part part)
    {
        int percent = ReachPercentOf(part);
        (PitchRange easy, PitchRange most) = (part.Range.Comfortable, part.Range.Extreme);
        return percent == Whole ? part : part with
        {
            Range = part.Range with
            {
                Extreme = new(Towards(easy.Low, most.Low, percent), Towards(easy.High, most.High, percent)),
            },
        };
    }

    private static Pitch Towards(Pitch easy, Pitch most, int percent) => percent == 0 || easy.Midi == most.Midi
        ? easy
        : KeySpelling.TonicFor(easy.Midi + ((most.Midi - easy.Midi) * percent / Whole), Mode.Major);
}
