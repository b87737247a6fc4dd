using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Looks at the pitches around the comfortable limits. Beyond a limit, pitch after pitch that is sung often and hardly ever in trouble
/// widens the range; at a limit, pitches that are often in trouble narrow it. At most a whole tone at a time.
/// </summary>
internal sealed class RangeAdvices
{
    private const int LeastExposed = 12;
    private const int LeastSessions = 3;
    private const int MostSemitones = 2;

    /// <summary>Where hardly anything is ever marked, silence does not mean that it went well.</summary>
    private const int LeastMarks = 3;

    /// <summary>The upper end of the interval: trouble at most once in seven times or so.</summary>
    private const double SeldomAtMost = 0.15;

    /// <summary>The lower end of the interval: trouble surely more than once in four times.</summary>
    private const double OftenAtLeast = 0.25;

    private readonly Part part;
    private readonly History history;
    private readonly int[] troubled;
    private readonly bool isListenedTo;

    internal RangeAdvices(Part part, History history)
    {
        (this.part, this.history) = (part, history);
        troubled = Exposures.InOrder(history.Kinds.Where(kind => !kind.IsPraise).SelectMany(kind => kind.Marks).Select(mark => mark.Row));
        isListenedTo = history.Kinds.Sum(kind => kind.Marks.Count) >= LeastMarks;
    }

    internal IEnumerable<RangeAdvice> All() => !isListenedTo ? [] : ((RangeAdvice?[])[Limit(isTop: true), Limit(isTop: false)]).OfType<RangeAdvice>();

    private RangeAdvice? Limit(bool isTop)
    {
        PitchRange easy = part.Range.Comfortable;
        int limit = isTop ? easy.High.Midi : easy.Low.Midi;
        int outward = isTop ? 1 : -1;
        bool isEasy = Of(limit).Rate.Low < OftenAtLeast;
        PitchEvidence[] wider = !isEasy ? [] : Run(limit + outward, outward, evidence => part.Range.Extreme.Contains(evidence.Midi) && evidence.Rate.High <= SeldomAtMost);
        if (wider.Length > 0)
        {
            return Advice(isTop, wider[^1].Midi, wider);
        }

        PitchEvidence[] narrower = Run(limit, -outward, evidence => evidence.Rate.Low >= OftenAtLeast);
        return narrower.Length > 0 && easy.Semitones > narrower.Length ? Advice(isTop, narrower[^1].Midi - outward, narrower) : null;
    }

    private PitchEvidence[] Run(int from, int direction, Func<PitchEvidence, bool> speaks) =>
    [
        .. Enumerable.Range(0, MostSemitones).Select(step => Of(from + (direction * step)))
            .TakeWhile(evidence => evidence.Rate.Exposed >= LeastExposed && evidence.Sessions >= LeastSessions && speaks(evidence)),
    ];

    private PitchEvidence Of(int midi)
    {
        Exposures exposures = history.Exposures;
        int[] rows = exposures.RowsWith(midi);
        int marked = troubled.Count(row => exposures.LineOf(row).Has(midi));
        return new(midi, Rate.Of(marked, rows.Length), rows.DistinctBy(row => exposures.Rows[row].Session).Count());
    }

    private RangeAdvice Advice(bool isTop, int limit, PitchEvidence[] evidence)
    {
        Pitch moved = KeySpelling.TonicFor(limit, Mode.Major);
        PitchRange easy = part.Range.Comfortable;
        PitchRange proposed = isTop ? new(easy.Low, moved) : new(moved, easy.High);
        return new(part.Id, isTop, proposed.Semitones > easy.Semitones, part.Range with { Comfortable = proposed }, evidence);
    }
}
