using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>Finds the keys of a drill: three half-steps away from the score towards ease, then key by key to it, with no more reach than that takes.</summary>
internal sealed class DrillLadder(Exercise exercise, Part singer, IReadOnlyList<Part> choir)
{
    private const int Away = 3;
    private const int ReachStep = 10;
    private const int Whole = 100;

    /// <summary>The ladder, and whether it arrives; null when the part can sing the line in no key at all.</summary>
    /// <param name="tonic">Of the score, for placement 0.</param>
    /// <param name="isLow">True where the bars lie low: easier is higher then.</param>
    internal (LadderSpec Keys, bool Arrives)? Find(Pitch tonic, bool isLow)
    {
        if (Best(tonic, isLow) is { } keys)
        {
            return (keys, true);
        }

        KeyLadder nearest = Build(Spec(tonic, isLow, 0, Whole));
        return nearest.Rungs is [var first, ..] ? (Best(first.Tonic, isLow) ?? Spec(first.Tonic, isLow, 0, Whole), false) : null;
    }

    private LadderSpec? Best(Pitch tonic, bool isLow) =>
        (from away in Enumerable.Range(0, Away + 1).Reverse()
         from reach in Enumerable.Range(0, (Whole / ReachStep) + 1)
         let spec = Spec(tonic, isLow, away, reach * ReachStep)
         where Build(spec).Rungs is { Count: > 0 } rungs && rungs.Count == away + 1 && rungs[^1].Tonic.Midi == tonic.Midi
         select spec).FirstOrDefault();

    private LadderSpec Spec(Pitch tonic, bool isLow, int away, int reach) => new()
    {
        Start = away == 0 ? tonic : Scales.KeySpelling.TonicFor(tonic.Midi + (isLow ? away : -away), exercise.Mode),
        Shape = isLow ? LadderShape.Down : LadderShape.Up,
        Limit = singer.Id,
        ReachPercent = reach,
        MostKeys = away + 1,
    };

    private KeyLadder Build(LadderSpec spec) => LadderBuilder.Build(exercise, choir, spec);
}
