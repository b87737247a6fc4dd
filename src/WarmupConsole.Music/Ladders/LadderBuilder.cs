using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>Builds the keys of a step: from middle C or the nearest key that fits, by semitones unless the plan says otherwise (common practice), as far as its limit allows.</summary>
public static class LadderBuilder
{
    /// <summary>Below so many keys for everyone, two ladders are offered.</summary>
    private const int FewKeys = 5;

    /// <summary>The rungs in order, and why they start and stop where they do. Without a pattern there are none.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="parts">The parts of the choir.</param>
    /// <param name="spec">What the plan says about the keys.</param>
    /// <param name="notes">How notes and keys are named in its sentences; scientific without it.</param>
    public static KeyLadder Build(Exercise exercise, IReadOnlyList<Part> parts, LadderSpec spec, NoteNaming? notes = null)
    {
        if (exercise.Pattern is not Pattern pattern)
        {
            return new([], []);
        }

        KeyFit fit = new(exercise, pattern, parts, spec, notes ?? NoteNaming.Scientific);
        int wished = (spec.Start ?? Pitch.MiddleC).Midi;
        if (fit.Nearest(wished) is not int start)
        {
            return WithOffer(fit, new([], [LadderReasons.NoKey(fit, parts)]) { Notes = fit.Notes });
        }

        KeyLadder ladder = spec.Shape == LadderShape.OutFromTheMiddle ? Spread(fit, start) : Climb(fit, start);
        return WithOffer(fit, ladder with { Reasons = [.. LadderReasons.Start(fit, wished, start), .. ladder.Reasons], Notes = fit.Notes });
    }

    internal static int Direction(LadderShape shape) => shape is LadderShape.Down or LadderShape.DownAndBack ? -1 : 1;

    internal static bool ComesBack(LadderShape shape) => shape is LadderShape.UpAndBack or LadderShape.DownAndBack;

    private static KeyLadder Climb(KeyFit fit, int start)
    {
        int step = Direction(fit.Spec.Shape) * fit.Spec.StepSemitones;
        int most = fit.Spec.MostKeys ?? int.MaxValue;
        List<Rung> rungs = [fit.Rung(start)];
        while (rungs.Count < most && fit.Fits(start + (step * rungs.Count)))
        {
            rungs.Add(fit.Rung(start + (step * rungs.Count)));
        }

        int turn = start + (step * (rungs.Count - 1));
        if (ComesBack(fit.Spec.Shape))
        {
            LadderEdit.AddWayBack(rungs);
        }

        return new(rungs, [LadderReasons.Stop(fit, turn, turn + step)]);
    }

    /// <summary>One key up, one key down, further each time; a side that has no more keys is left out.</summary>
    private static KeyLadder Spread(KeyFit fit, int start)
    {
        int most = fit.Spec.MostKeys ?? int.MaxValue;
        List<Rung> rungs = [fit.Rung(start)];
        (int top, int bottom) = (start, start);
        int step = fit.Spec.StepSemitones;
        (bool canRise, bool canFall) = (fit.Fits(top + step), fit.Fits(bottom - step));
        while (rungs.Count < most && (canRise || canFall))
        {
            if (canRise && (top - start <= start - bottom || !canFall))
            {
                top += step;
                rungs.Add(fit.Rung(top));
                canRise = fit.Fits(top + step);
            }
            else
            {
                bottom -= step;
                rungs.Add(fit.Rung(bottom));
                canFall = fit.Fits(bottom - step);
            }
        }

        return new(rungs, canRise || canFall
            ? [LadderReasons.CutShort(fit, rungs[^1].Tonic.Midi)]
            : [LadderReasons.Stop(fit, top, top + step), LadderReasons.Stop(fit, bottom, bottom - step)]);
    }

    private static KeyLadder WithOffer(KeyFit fit, KeyLadder ladder) =>
        fit.Spec.Limit == LadderSpec.Everyone && fit.Limiting.Length > 1 && fit.Common.Count < FewKeys && TwoLadders.Find(fit.Limiting) is { } offer
            ? ladder with { Reasons = [.. ladder.Reasons, LadderReasons.Two(fit, offer)], Offer = offer.Spelled(fit) }
            : ladder;
}
