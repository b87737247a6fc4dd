using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>No part rests for long while others sing: voices and attention cool down.</summary>
internal sealed class LongRestRule : IPlanRule
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(90);

    public string Name => "long-rest";

    public IEnumerable<PlanRemark> Check(Warmup warmup) =>
        warmup.Choir.Parts.Select((part, index) => Check(warmup, part, index)).OfType<PlanRemark>();

    /// <summary>The longest rest of a part, told at the step in which it begins; a step without keys is for everyone and ends it.</summary>
    private PlanRemark? Check(Warmup warmup, Part part, int partIndex)
    {
        (TimeSpan Length, int Step) longest = (TimeSpan.Zero, 0);
        (TimeSpan Length, int Step) present = longest;
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            Beats beats = StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats);
            present = step.Exercise.IsSung ? present : (TimeSpan.Zero, index);
            foreach ((int key, Rung sung) in step.Ladder.Rungs.Index())
            {
                present = sung.Parts[partIndex].Sings
                    ? (TimeSpan.Zero, index)
                    : (present.Length + step.Tempos.At(key).DurationOf(beats), present.Length == TimeSpan.Zero ? index : present.Step);
                longest = present.Length > longest.Length ? present : longest;
            }
        }

        return longest.Length <= Longest
            ? null
            : new(PlanSeverity.Warning, Name, longest.Step, PlanTexts.LongRest(longest.Step, warmup.Steps[longest.Step].Exercise, part, longest.Length), "keys");
    }
}
