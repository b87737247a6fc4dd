using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning.Rules;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What can be said against a step whatever stands beside it: such a step is not offered, so no plan has it.</summary>
internal static class Soundness
{
    /// <summary>Half of the longest rest that the check lets pass: two steps that meet are together within it.</summary>
    private static readonly TimeSpan LongestRestAtAnEnd = TimeSpan.FromSeconds(45);

    /// <summary>What settles the voices does not go up itself.</summary>
    private static readonly SettleAfterPeakRule Settling = new();

    private static readonly IPlanRule[] Rules =
        [new NoKeysRule(), new VoiceWithoutPartRule(), new EntriesAndExitsRule(), new BeyondExtremeRule(), new LongRestRule(), new ClosedVowelHighRule()];

    internal static bool IsGiven(Warmup alone)
    {
        WarmupStep step = alone.Steps[0];
        return step.Planned > TimeSpan.Zero && HasWork(step) && Together.IsKeptIn(step) && RestsAreShort(step)
            && (step.Exercise.Stage != Stage.Settling || !Settling.Check(alone).Any())
            && Array.TrueForAll(Rules, rule => !rule.Check(alone).Any());
    }

    private static bool HasWork(WarmupStep step) => step.Exercise.IsSung ? step.Ladder.Rungs.Count >= StepVariants.FewestKeys : step.Rounds > 0;

    private static bool RestsAreShort(WarmupStep step)
    {
        int keys = step.Ladder.Rungs.Count;
        for (int part = 0; keys > 0 && part < step.Ladder.Rungs[0].Parts.Count; part++)
        {
            if (Rest(step, part, Enumerable.Range(0, keys)) > LongestRestAtAnEnd || Rest(step, part, Enumerable.Range(0, keys).Reverse()) > LongestRestAtAnEnd)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>How long a part rests from one end on.</summary>
    private static TimeSpan Rest(WarmupStep step, int part, IEnumerable<int> keys)
    {
        Beats beats = StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats);
        return keys.TakeWhile(key => !step.Ladder.Rungs[key].Parts[part].Sings).Aggregate(TimeSpan.Zero, (rest, key) => rest + step.Tempos.At(key).DurationOf(beats));
    }
}
