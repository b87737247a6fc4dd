using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// Extremes belong to the last third of the warm-up (common practice). A note is extreme when it lies more than half-way from the
/// end of the comfortable range to the end of the extreme one; the third is counted in planned time, rung by rung. Where a step does not
/// reach out at all, the usual tolerance passes: it only keeps entries and exits few.
/// </summary>
internal sealed class ExtremesLateRule : IPlanRule
{
    private static readonly int UsualTolerance = new LadderSpec().ToleranceSemitones;

    public string Name => "extremes-late";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        TimeSpan lastThird = warmup.Planned * 2 / 3;
        TimeSpan end = TimeSpan.Zero;
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            end += step.Planned;
            if (warmup.FirstNote(index, Before(lastThird, step, end), (range, note) => IsTooFar(step, range, note)) is { } at)
            {
                yield return new(PlanSeverity.Error, Name, index, PlanTexts.ExtremeTooEarly(at), "keys");
            }
        }
    }

    /// <summary>True when some note of the step belongs to the last third.</summary>
    internal static bool HasExtremes(WarmupStep step) => step.Ladder.Rungs.SelectMany(rung => rung.Parts)
        .Any(part => part.Sings && (IsTooFar(step, part.Part.Range, part.Span.High) || IsTooFar(step, part.Part.Range, part.Span.Low)));

    private static bool IsTooFar(WarmupStep step, VoiceRange range, Pitch note) =>
        IsExtreme(range, note) && (step.Plan.Keys.ReachPercent > 0 || Beyond(range, note) > UsualTolerance);

    private static bool IsExtreme(VoiceRange range, Pitch note)
    {
        int margin = note > range.Comfortable.High
            ? range.Extreme.High.Midi - range.Comfortable.High.Midi
            : range.Comfortable.Low.Midi - range.Extreme.Low.Midi;
        return Beyond(range, note) > 0 && 2 * Beyond(range, note) > margin;
    }

    /// <summary>Semitones outside the comfortable range; negative or zero inside it.</summary>
    private static int Beyond(VoiceRange range, Pitch note) =>
        Math.Max(note.Midi - range.Comfortable.High.Midi, range.Comfortable.Low.Midi - note.Midi);

    private static List<Rung> Before(TimeSpan limit, WarmupStep step, TimeSpan stepEnd)
    {
        Beats beats = StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats);
        TimeSpan begins = stepEnd;
        List<Rung> before = [];
        for (int key = step.Ladder.Rungs.Count - 1; key >= 0; key--)
        {
            begins -= step.Tempos.At(key).DurationOf(beats);
            if (begins < limit)
            {
                before.Insert(0, step.Ladder.Rungs[key]);
            }
        }

        return before;
    }
}
