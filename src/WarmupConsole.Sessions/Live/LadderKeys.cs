using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>Rungs for keys that are known by their tonics alone: from a log, or asked for live.</summary>
internal static class LadderKeys
{
    /// <summary>Planned rungs where the plan has them, and rungs beyond it as "one more key" makes them; none for a step that has no keys.</summary>
    public static IReadOnlyList<Rung> Rungs(WarmupStep step, IReadOnlyList<Part> parts, IEnumerable<int> keys)
    {
        Dictionary<int, Rung> known = [];
        foreach (Rung rung in step.Ladder.Rungs)
        {
            known[rung.Tonic.Midi] = rung;
        }

        return known.Count == 0 ? [] : [.. keys.Select(key => known.TryGetValue(key, out Rung? rung) ? rung : known[key] = Beyond(step, parts, known, key))];
    }

    private static Rung Beyond(WarmupStep step, IReadOnlyList<Part> parts, Dictionary<int, Rung> known, int key)
    {
        int nearest = known.Keys.MinBy(other => Math.Abs(other - key));
        LadderSpec towards = step.Plan.Keys with { Shape = key > nearest ? LadderShape.Up : LadderShape.Down, StepSemitones = Math.Abs(key - nearest) };
        return LadderEdit.OneMoreKey(step.Exercise, parts, towards, new KeyLadder([known[nearest]], []), 0).Added;
    }
}
