using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>The ways in which an exercise may be led: shorter or longer, around a pitch that needs work, or up to the peak.</summary>
internal sealed class StepVariants(NextPlanInput input, SeasonTarget season, Approach approach, IReadOnlyList<Wish> wishes)
{
    internal const int FewestKeys = 3;

    private const int MostKeys = 10;
    private const int PeakKeys = 6;
    private const int MostRounds = 20;
    private const int RoundsEitherWay = 3;
    private const int LowStart = 5;

    /// <summary>Ladders are made for so many targets: beyond, the strongest are enough to fill an evening.</summary>
    private const int MostTargets = 10;

    private readonly Target[] _targets = [.. wishes.Where(wish => wish.Target is not null).OrderByDescending(wish => wish.Points[0]).Take(MostTargets).Select(wish => wish.Target!)];

    /// <summary>Each as a plan would write it; the same variant may come twice.</summary>
    internal IEnumerable<PlanStep> Of(PlanStep step, Exercise exercise) =>
        exercise.IsSung ? Ladders(exercise).Select(keys => step with { Keys = keys }) : Rounds(exercise).Select(rounds => step with { Rounds = rounds });

    private static IEnumerable<int?> Rounds(Exercise exercise)
    {
        int fewest = Math.Max(1, exercise.Rounds - RoundsEitherWay);
        int most = Math.Min(MostRounds, exercise.Rounds + RoundsEitherWay);
        return Enumerable.Range(fewest, most - fewest + 1).Select(rounds => rounds == exercise.Rounds ? (int?)null : rounds);
    }

    private IEnumerable<LadderSpec> Ladders(Exercise exercise) =>
        exercise.Stage == Stage.Settling ? Falling(exercise) : Climbing(exercise).Concat(Answers(exercise)).Concat(Peaks(exercise));

    private IEnumerable<LadderSpec> Falling(Exercise exercise) =>
        from start in new[] { Pitch.MiddleC.Midi + LowStart, Pitch.MiddleC.Midi }
        from keys in Lengths(exercise, new() { Start = KeySpelling.TonicFor(start, exercise.Mode), Shape = LadderShape.Down })
        select keys;

    private IEnumerable<LadderSpec> Climbing(Exercise exercise)
    {
        LadderSpec[] everyone = [.. Lengths(exercise, new())];
        LadderSpec[] any = everyone.Length > 0 || Together.IsNeededFor(exercise) ? everyone : [.. Lengths(exercise, new() { Limit = LadderSpec.AnyPart })];
        LadderSpec low = new() { Start = KeySpelling.TonicFor(Pitch.MiddleC.Midi - LowStart, exercise.Mode) };
        return [.. any, .. any.Select(keys => keys with { Shape = LadderShape.Up }), .. Lengths(exercise, low)];
    }

    /// <summary>As many keys as there are, and fewer, two at a time: there and back each makes four keys of difference.</summary>
    private IEnumerable<LadderSpec> Lengths(Exercise exercise, LadderSpec spec)
    {
        int keys = KeysOf(exercise, spec with { Shape = spec.Shape == LadderShape.Down ? LadderShape.Down : LadderShape.Up, MostKeys = MostKeys });
        return keys < FewestKeys ? [] : Enumerable.Range(FewestKeys, keys - FewestKeys + 1).Where(most => most == keys || (keys - most) % 2 == 0).Select(most => spec with { MostKeys = most });
    }

    private IEnumerable<LadderSpec> Answers(Exercise exercise) => _targets
        .Select(target => approach.Around(exercise, target).FirstOrDefault(keys => approach.ComesFromBothSides(Ready(exercise, keys), target)))
        .OfType<LadderSpec>();

    /// <summary>Up to the edge of what is allowed this week, each part as far as its own; only what all sing alike.</summary>
    private IEnumerable<LadderSpec> Peaks(Exercise exercise)
    {
        if (exercise.Stage != Stage.Sung || Together.IsNeededFor(exercise) || season.ReachPercent == 0)
        {
            yield break;
        }

        foreach (string limit in new[] { LadderSpec.Everyone, LadderSpec.AnyPart })
        {
            LadderSpec whole = new() { Limit = limit, ReachPercent = season.ReachPercent, Shape = LadderShape.Up };
            int keys = KeysOf(exercise, whole);
            int from = Math.Max(0, keys - PeakKeys);
            if (keys - from >= FewestKeys)
            {
                yield return whole with { Start = KeySpelling.TonicFor(StartOf(exercise, whole) + from, exercise.Mode), MostKeys = PeakKeys, Shape = LadderShape.UpAndBack };
                yield return whole with { Start = KeySpelling.TonicFor(StartOf(exercise, whole) + from, exercise.Mode), MostKeys = PeakKeys };
            }
        }
    }

    private int KeysOf(Exercise exercise, LadderSpec keys) => Build(exercise, keys).Rungs.Count;

    private int StartOf(Exercise exercise, LadderSpec keys) => Build(exercise, keys).Rungs[0].Tonic.Midi;

    private KeyLadder Build(Exercise exercise, LadderSpec keys) => LadderBuilder.Build(exercise, input.Choir.Parts, keys, input.Choir.Notes);

    private WarmupStep Ready(Exercise exercise, LadderSpec keys) =>
        new(new() { ExerciseId = exercise.Id, Keys = keys }, exercise, exercise.Tempo.Default, Build(exercise, keys), 0, 0, TimeSpan.Zero);
}
