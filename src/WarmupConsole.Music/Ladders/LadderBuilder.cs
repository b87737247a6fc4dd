using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>Builds the keys of a step: by semitones from middle C or the nearest key that fits (common practice), as far as the plan's limit allows.</summary>
public static class LadderBuilder
{
    /// <summary>Below so many keys for everyone, two ladders are offered.</summary>
    private const int FewKeys = 5;

    /// <summary>The rungs in order, and why they start and stop where they do. Without a pattern there are none.</summary>
    public static KeyLadder Build(Exercise exercise, IReadOnlyList<Part> parts, LadderSpec spec)
    {
        if (exercise.Pattern is not Pattern pattern)
        {
            return new([], []);
        }

        KeyFit fit = new(exercise, pattern, parts, spec);
        int wished = (spec.Start ?? Pitch.MiddleC).Midi;
        return fit.Nearest(wished) is int start ? Climb(fit, wished, start) : new([], [LadderReasons.NoKey(fit, parts), .. Offers(fit)]);
    }

    private static KeyLadder Climb(KeyFit fit, int wished, int start)
    {
        int direction = Direction(fit.Spec.Shape);
        int most = fit.Spec.MostKeys ?? int.MaxValue;
        List<Rung> rungs = [fit.Rung(start)];
        while (rungs.Count < most && fit.Fits(start + (direction * rungs.Count)))
        {
            rungs.Add(fit.Rung(start + (direction * rungs.Count)));
        }

        int turn = start + (direction * (rungs.Count - 1));
        if (ComesBack(fit.Spec.Shape))
        {
            LadderEdit.AddWayBack(rungs);
        }

        return new(rungs, [.. LadderReasons.Start(fit, wished, start), LadderReasons.Stop(fit, turn, turn + direction), .. Offers(fit)]);
    }

    internal static int Direction(LadderShape shape) => shape is LadderShape.Up or LadderShape.UpAndBack ? 1 : -1;

    internal static bool ComesBack(LadderShape shape) => shape is LadderShape.UpAndBack or LadderShape.DownAndBack;

    private static IEnumerable<string> Offers(KeyFit fit)
    {
        if (fit.Spec.Limit == LadderSpec.Everyone && fit.Limiting.Length > 1 && fit.Common.Count < FewKeys
            && TwoLadders.Find(fit.Limiting) is TwoLadders offer)
        {
            yield return LadderReasons.Two(fit, offer);
        }
    }
}
