using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
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

    /// <summary>The parts as far as they are not to be spared; empty when none is.</summary>
    internal IReadOnlyList<Part> Spared { get; init; } = [];

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
        exercise.Stage == Stage.Settling
        ? Falling(exercise).Concat(Sparing(exercise))
        : Climbing(exercise).Concat(Answers(exercise)).Concat(Sparing(exercise)).Concat(Peaks(exercise));

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
        return keys < FewestKeys ? [] : Fewer(keys).Select(most => spec with { MostKeys = most });
    }

    private static IEnumerable<int> Fewer(int keys) => Enumerable.Range(FewestKeys, keys - FewestKeys + 1).Where(most => (keys - most) % 2 == 0);

    private IEnumerable<LadderSpec> Answers(Exercise exercise) => _targets
        .Select(target => approach.Around(exercise, target).FirstOrDefault(keys => approach.ComesFromBothSides(Ready(exercise, keys), target)))
        .OfType<LadderSpec>();

    /// <summary>Within what is left where parts are to be spared: from above for what is gentle, else up and back or one way.</summary>
    private IEnumerable<LadderSpec> Sparing(Exercise exercise)
    {
        if (Spared.Count == 0)
        {
            return [];
        }

        IEnumerable<LadderSpec> falling = Gentle.Is(exercise) ? Left(exercise, new() { Start = Tonic(exercise, LowStart), Shape = LadderShape.Down }) : [];
        LadderSpec[] climbing = exercise.Stage == Stage.Settling ? [] : [.. new[] { 0, -LowStart }.SelectMany(start => Left(exercise, new() { Start = Tonic(exercise, start), Shape = LadderShape.Up }))];
        return [.. falling, .. climbing, .. climbing.Select(keys => keys with { Shape = LadderShape.UpAndBack })];
    }

    /// <summary>The keys that are left, written so that the whole choir sings them and no others; and fewer, two at a time.</summary>
    private IEnumerable<LadderSpec> Left(Exercise exercise, LadderSpec spec)
    {
        IReadOnlyList<Rung> left = LadderBuilder.Build(exercise, Spared, spec with { MostKeys = MostKeys }, input.Choir.Notes).Rungs;
        return left.Count < FewestKeys ? [] : Fewer(left.Count).Select(most => spec with { Start = KeySpelling.TonicFor(left[0].Tonic.Midi, exercise.Mode), MostKeys = most });
    }

    private static Pitch Tonic(Exercise exercise, int semitones) => KeySpelling.TonicFor(Pitch.MiddleC.Midi + semitones, exercise.Mode);

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
