using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>Live changes to a ladder, as new ladders. What has been sung, and the present rung, never change.</summary>
public static class LadderEdit
{
    /// <summary>After the present rung, back to the first key; at the first key the ladder ends.</summary>
    /// <param name="rungs">The ladder.</param>
    /// <param name="index">The present rung.</param>
    public static IReadOnlyList<Rung> TurnRound(IReadOnlyList<Rung> rungs, int index)
    {
        List<Rung> turned = [.. rungs.Take(index + 1)];
        AddWayBack(turned);
        return turned;
    }

    /// <summary>
    /// One key further. While the turning point is ahead or sounding it moves one key on, and the way back follows as before;
    /// on the way back, or at the end of a ladder that does not come back, one key is added at the end. A ladder out from the
    /// middle goes on at its end, on the side whose turn it is.
    /// </summary>
    /// <param name="exercise">The exercise; it is sung.</param>
    /// <param name="parts">The parts of the choir, as the ladder was built with.</param>
    /// <param name="spec">What the plan says about the keys.</param>
    /// <param name="ladder">The ladder; not empty.</param>
    /// <param name="index">The present rung.</param>
    /// <exception cref="ArgumentException">The exercise has no pattern.</exception>
    public static LadderExtension OneMoreKey(Exercise exercise, IReadOnlyList<Part> parts, LadderSpec spec, KeyLadder ladder, int index)
    {
        IReadOnlyList<Rung> rungs = ladder.Rungs;
        KeyFit fit = new(exercise, exercise.Pattern ?? throw new ArgumentException("Only sung exercises have keys.", nameof(exercise)), parts, spec, ladder.Notes);
        int direction = LadderBuilder.Direction(spec.Shape);
        bool spreads = spec.Shape == LadderShape.OutFromTheMiddle;
        int turn = TurningPoint(rungs, direction);
        bool turnAhead = turn >= index && !spreads;
        int from = turnAhead ? turn : rungs.Count - 1;
        Rung added = fit.InsistedRung(spreads ? NextOutward(rungs, spec.StepSemitones) : rungs[from].Tonic.Midi + ((turnAhead ? direction : -direction) * spec.StepSemitones));
        List<Rung> longer = [.. rungs.Take(from + 1), added];
        if (turnAhead && (LadderBuilder.ComesBack(spec.Shape) || turn < rungs.Count - 1))
        {
            AddWayBack(longer);
        }

        List<PartKeys> beyond = fit.BeyondExtreme(rungs[from], added);
        return new(longer, added, [.. beyond.Select(keys => keys.Part)], LadderReasons.BeyondExtreme(fit, beyond, added.Tonic.Midi));
    }

    /// <summary>Beyond the top, or, when the top was the last key, beyond the bottom.</summary>
    private static int NextOutward(IReadOnlyList<Rung> rungs, int step)
    {
        (int low, int high) = (rungs.Min(rung => rung.Tonic.Midi), rungs.Max(rung => rung.Tonic.Midi));
        return rungs[^1].Tonic.Midi == high && low < high ? low - step : high + step;
    }

    /// <summary>Where a ladder is furthest from its start in its direction; the last such rung.</summary>
    private static int TurningPoint(IReadOnlyList<Rung> rungs, int direction)
    {
        int turn = 0;
        for (int i = 1; i < rungs.Count; i++)
        {
            turn = direction * (rungs[i].Tonic.Midi - rungs[turn].Tonic.Midi) >= 0 ? i : turn;
        }

        return turn;
    }

    /// <summary>From the last rung to the first key, in the keys between them that the ladder has been through; nothing is built anew.</summary>
    internal static void AddWayBack(List<Rung> rungs)
    {
        int first = rungs[0].Tonic.Midi;
        int key = rungs[^1].Tonic.Midi;
        while (key != first)
        {
            key += Math.Sign(first - key);
            if (rungs.Find(rung => rung.Tonic.Midi == key) is Rung known)
            {
                rungs.Add(known);
            }
        }
    }
}
