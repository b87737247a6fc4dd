using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>All that is to be spared in the next plan: what findings, marks and needs say of too much effort; and where the director insists.</summary>
internal sealed class Sparings
{
    /// <summary>Kinds that speak of the voice and not of the key in which they were typed.</summary>
    private static readonly string[] OfTheVoice = ["tired", "hoarse"];

    private readonly NextPlanInput _input;
    private readonly Approach _approach;
    private readonly IReadOnlyList<Sparing> _all;

    internal Sparings(NextPlanInput input, Approach approach)
    {
        (_input, _approach) = (input, approach);
        _all =
        [
            .. input.Findings.SelectMany(Of),
            .. Need.AllIn(input).SelectMany(Of),
            .. input.Needs.Where(need => need.IsOpenOn(input.Date)).SelectMany(Of),
        ];
        Parts = _all.Count == 0 ? [] : [.. input.Choir.Parts.Select(Narrowed)];
    }

    /// <summary>The parts of the choir with what is left of them; empty when nobody is to be spared.</summary>
    internal IReadOnlyList<Part> Parts { get; }

    /// <summary>Those of a finding; none unless it is one of effort.</summary>
    internal Sparing[] Of(Finding finding) => !MarkKindData.IsEffort(_input.Choir, finding.Kind) ? []
        : [.. PartsWith(finding.Part).Select(part => new Sparing(part, finding.Pitch, FindingText.Title(finding, _input.Choir)))];

    /// <summary>Those of what was heard last time, one for each part that it was heard of.</summary>
    internal Sparing[] Of(Need need) => !MarkKindData.IsEffort(_input.Choir, need.Kind) ? []
        : [.. need.Tops.SelectMany(top => PartsWith(top.Part).Select(part => new Sparing(part, need.Pitch ?? (OfTheVoice.Contains(need.Kind) ? null : top.Pitch), need.Words)))];

    /// <summary>Those of a need that came from a mark of effort.</summary>
    internal Sparing[] Of(ChoirNeed need) => !MarkKindData.IsEffort(_input.Choir, need.Kind) ? []
        : [.. need.PartsOf(_input.Choir.Parts).Select(part => new Sparing(part, need.Pitch ?? need.Region?.High, need.WordsIn(_input.Choir.Notes)))];

    /// <summary>What keeps a part from a pitch, or null.</summary>
    internal Sparing? KeepingFrom(string part, Pitch? pitch) =>
        pitch is { } asked ? _all.FirstOrDefault(one => one.Part.Id == part && one.KeepsFrom(asked.Midi)) : null;

    /// <summary>True when a part is not to be led to the top or the bottom of what is easy.</summary>
    internal bool IsKeptFromEnd(Part part, bool isTop) => _all.Any(one => one.Part.Id == part.Id && (isTop ? !one.IsLow : !one.IsHigh));

    /// <summary>What a step crosses, each part once; what the director insists on is none.</summary>
    internal IEnumerable<Sparing> CrossedBy(WarmupStep step) =>
        _all.Where(one => one.KeysCrossedBy(step) > 0 && !Insisted(one.Part).Any(need => Answers(step, need, one)))
            .OrderByDescending(one => one.KeysCrossedBy(step)).DistinctBy(one => one.Part.Id);

    /// <summary>What keeps a part from something that the director asks for all the same.</summary>
    internal IEnumerable<Sparing> InsistedOn() =>
        _all.Where(one => Insisted(one.Part).Any(need => one.KeepsFrom((need.Pitch ?? need.Region!.Value.High).Midi))).DistinctBy(one => one.Words);

    /// <summary>Pitches and regions that were asked for by hand or from a score.</summary>
    private IEnumerable<ChoirNeed> Insisted(Part part) => _input.Needs.Where(need =>
        need.IsOpenOn(_input.Date) && (need.Pitch ?? need.Region?.High) is not null && need.PartsOf([part]).Any() && !MarkKindData.IsEffort(_input.Choir, need.Kind));

    private bool Answers(WarmupStep step, ChoirNeed need, Sparing sparing) => need.Region is { } region
        ? sparing.Spans(step) is { Length: > 0 } spans && spans.Max(span => span.High.Midi) == region.High.Midi
        : _approach.ComesFromBothSides(step, new(sparing.Part.Id, need.Pitch, null));

    private IEnumerable<Part> PartsWith(string id) => _input.Choir.Parts.Where(part => part.Id == id);

    /// <summary>What all its sparings leave of a part; of two that leave nothing in common the first counts.</summary>
    private Part Narrowed(Part part) => _all.Where(one => one.Part.Id == part.Id).Aggregate(part, (left, one) =>
        Math.Max(left.Range.Comfortable.Low.Midi, one.Lowest) <= Math.Min(left.Range.Comfortable.High.Midi, one.Highest) ? one.Within(left) : left);
}
