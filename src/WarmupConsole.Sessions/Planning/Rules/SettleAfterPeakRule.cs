using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>After notes above the comfortable range the voices come back: a settling exercise follows (common practice).</summary>
internal sealed class SettleAfterPeakRule : IPlanRule
{
    public string Name => "settle-after-peak";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        int peak = warmup.Steps.Select((step, index) => IsHigh(warmup, index) ? index : -1).Max();
        if (peak >= 0 && !warmup.Steps.Skip(peak + 1).Any(step => step.Exercise.Stage == Stage.Settling))
        {
            yield return new(PlanSeverity.Hint, Name, peak, PlanTexts.NothingSettles(peak, warmup.Steps[peak].Exercise));
        }
    }

    private static bool IsHigh(Warmup warmup, int step) =>
        warmup.FirstNote(step, warmup.Steps[step].Ladder.Rungs, (range, note) => note.Midi > range.Comfortable.High.Midi) is not null;
}
