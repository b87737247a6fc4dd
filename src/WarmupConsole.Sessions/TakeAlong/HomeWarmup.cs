using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.TakeAlong;

/// <summary>A warm-up for one part at home: the same exercises, in keys that this part sings with ease, for nobody listens there.</summary>
public static class HomeWarmup
{
    /// <summary>The plan made ready for one part alone. Steps in which no key suits it stay, without rungs.</summary>
    /// <param name="warmup">For the whole choir.</param>
    /// <param name="part">One of its parts.</param>
    public static Warmup For(Warmup warmup, Part part)
    {
        ArgumentNullException.ThrowIfNull(warmup);
        return WarmupBuilder.Build(
            warmup.Choir with { Parts = [part] },
            warmup.Plan with { Steps = [.. warmup.Plan.Steps.Select(step => step with { Keys = WithEase(step.Keys) })] },
            warmup.Steps.Select(step => step.Exercise).DistinctBy(exercise => exercise.Id).ToDictionary(exercise => exercise.Id));
    }

    private static LadderSpec WithEase(LadderSpec keys) =>
        keys with { Limit = LadderSpec.Everyone, ReachPercent = 0, ToleranceSemitones = 0, TakesOctave = false };
}
