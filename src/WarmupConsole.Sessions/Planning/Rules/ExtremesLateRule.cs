using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// Extremes belong to the last third of the warm-up (common practice). A note is extreme when it lies more than half-way from the
/// end of the comfortable range to the end of the extreme one; the third is counted in planned time, rung by rung.
/// </summary>
internal sealed class ExtremesLateRule : IPlanRule
{
    public string Name => "extremes-late";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        TimeSpan lastThird = warmup.Planned * 2 / 3;
        TimeSpan end = TimeSpan.Zero;
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            end += step.Planned;
            if (Before(lastThird, step, end).FirstNote(IsExtreme) is var (rung, part, note))
            {
                yield return new(PlanSeverity.Error, Name, index, PlanTexts.ExtremeTooEarly(index, step.Exercise, part, rung.Tonic, note));
            }
        }
    }

    /// <summary>True for a note in the outer half of the margin between comfortable and extreme.</summary>
    internal static bool IsExtreme(VoiceRange range, Pitch note)
    {
        int above = note.Midi - range.Comfortable.High.Midi;
        int below = range.Comfortable.Low.Midi - note.Midi;
        return (above > 0 && 2 * above > range.Extreme.High.Midi - range.Comfortable.High.Midi)
            || (below > 0 && 2 * below > range.Comfortable.Low.Midi - range.Extreme.Low.Midi);
    }

    private static IEnumerable<Rung> Before(TimeSpan limit, WarmupStep step, TimeSpan stepEnd)
    {
        TimeSpan rung = step.Tempo.DurationOf(StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats));
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        return rungs.Where((_, index) => stepEnd - (rung * (rungs.Count - index)) < limit);
    }
}
