using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Ladders;

/// <summary>What holds for every choir, pattern and plan.</summary>
public class LadderLawTests
{
    private static readonly Gen<Part> AnyPart = Gen.Select(Gen.Int[36, 62], Gen.Int[5, 30], Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[-1, 1], (low, span, below, above, placement) =>
        new Part("p", $"P{low}", [], ["everyone"], 0, placement, new(Between(low - below, low + span + above), Between(low, low + span))));

    private static readonly Gen<LadderSpec> AnySpec = Gen.Select(
        Gen.Select(Gen.Int[48, 72], Gen.Enum<LadderShape>(), Gen.Int[1, 12]), Gen.Bool, Gen.Bool, Gen.Int[0, 100], Gen.Int[0, 12], Gen.Int[0, 24], (way, any, octave, reach, tolerance, most) => new LadderSpec
        {
            Start = KeySpelling.TonicFor(way.Item1, Mode.Major),
            Shape = way.Item2,
            StepSemitones = way.Item3,
            TakesOctave = octave,
            Limit = any ? LadderSpec.AnyPart : LadderSpec.Everyone,
            ReachPercent = reach,
            ToleranceSemitones = tolerance,
            MostKeys = most == 0 ? null : most,
        });

    private static readonly Gen<Exercise> AnyExercise = Gen.Select(
        Gen.OneOf("1", "1 2 3 2 1", "5 4 3 2 1", "1 3 5 8 5 3 1", "1 3 5 4 2 7, 1", "1 #4 b7 8", "5, 1 3 5 10"), Gen.Enum<Mode>(), Samples.Exercise);

    private static readonly Gen<(Exercise Exercise, Part[] Parts, LadderSpec Spec)> AnyCase = Gen.Select(AnyExercise, AnyPart.Array[1, 8].Select(Named), AnySpec);

    [Fact]
    public void No_singing_part_leaves_its_tolerance_or_its_extreme() => Sample((c, ladder) => Assert.All(
        ladder.Rungs.SelectMany(rung => rung.Parts).Where(part => part.Sings),
        part =>
        {
            VoiceRange range = part.Part.Range;
            Assert.True(range.Extreme.Contains(part.Span));
            Assert.True(part.Span.High.Midi <= Allowed(range.Comfortable.High, range.Extreme.High, c.Spec) + c.Spec.ToleranceSemitones);
            Assert.True(part.Span.Low.Midi >= Allowed(range.Comfortable.Low, range.Extreme.Low, c.Spec) - c.Spec.ToleranceSemitones);
        }));

    [Fact]
    public void Where_everyone_is_the_limit_nobody_rests_and_where_any_is_somebody_sings() => Sample((c, ladder) => Assert.All(
        ladder.Rungs,
        rung => Assert.True(c.Spec.Limit == LadderSpec.Everyone ? rung.Parts.All(part => part.Sings) : rung.Parts.Any(part => part.Sings))));

    [Fact]
    public void Keys_move_by_the_steps_of_the_plan() => Sample((c, ladder) => Assert.All(
        ladder.Rungs.Zip(ladder.Rungs.Skip(1)),
        pair =>
        {
            int move = Math.Abs(pair.First.Tonic.Midi - pair.Second.Tonic.Midi);
            Assert.True(c.Spec.Shape == LadderShape.OutFromTheMiddle ? move > 0 && move % c.Spec.StepSemitones == 0 : move == c.Spec.StepSemitones);
        }));

    [Fact]
    public void Out_from_the_middle_every_key_is_new_and_the_keys_lie_side_by_side() => Sample((c, ladder) =>
    {
        if (c.Spec.Shape == LadderShape.OutFromTheMiddle && ladder.Rungs.Count > 0)
        {
            int[] keys = [.. ladder.Rungs.Select(Key).Order()];
            Assert.Equal(Enumerable.Range(0, keys.Length).Select(i => keys[0] + (i * c.Spec.StepSemitones)), keys);
        }
    });

    [Fact]
    public void The_octave_is_taken_only_by_who_would_rest_and_only_where_the_plan_says_so() => Sample((c, ladder) =>
    {
        KeyLadder without = LadderBuilder.Build(c.Exercise, c.Parts, c.Spec with { TakesOctave = false });
        Assert.Equal(without.Rungs.Select(Key), ladder.Rungs.Select(Key));
        Assert.All(without.Rungs.Zip(ladder.Rungs).SelectMany(pair => pair.First.Parts.Zip(pair.Second.Parts)), pair =>
        {
            Assert.Equal(0, pair.First.OctaveShift);
            Assert.Equal(pair.First.Sings, pair.Second is { Sings: true, OctaveShift: 0 });
            Assert.True(pair.Second.OctaveShift == 0 || (c.Spec.TakesOctave && pair.Second.Sings));
        });
    });

    [Fact]
    public void Announcements_lead_from_the_first_rung_to_every_other_one() => Sample((_, ladder) =>
    {
        HashSet<string> singing = [.. ladder.Rungs.Take(1).SelectMany(rung => rung.Parts).Where(part => part.Sings).Select(part => part.Part.Id)];
        ILookup<int, LadderAnnouncement> said = ladder.Announcements.ToLookup(announcement => announcement.Rung);
        for (int rung = 0; rung + 1 < ladder.Rungs.Count; rung++)
        {
            singing.UnionWith(said[rung].SelectMany(announcement => announcement.Enter).Select(part => part.Id));
            singing.ExceptWith(said[rung].SelectMany(announcement => announcement.Leave).Select(part => part.Id));
            Assert.Equal(ladder.Rungs[rung + 1].Parts.Where(part => part.Sings).Select(part => part.Part.Id).Distinct().Order(), singing.Order());
        }
    });

    [Fact]
    public void A_ladder_that_comes_back_ends_where_it_began_and_turns_once() => Sample((c, ladder) =>
    {
        if (c.Spec.Shape is LadderShape.UpAndBack or LadderShape.DownAndBack)
        {
            Assert.Equal(ladder.Rungs, ladder.Rungs.Reverse());
            Assert.True(ladder.Rungs.Count == 0 || ladder.Rungs.Count % 2 == 1);
        }
    });

    [Fact]
    public void No_ladder_has_more_keys_than_the_plan_asks_for() => Sample((c, ladder) =>
        Assert.True(ladder.Rungs.Select(rung => rung.Tonic.Midi).Distinct().Count() <= (c.Spec.MostKeys ?? int.MaxValue)));

    [Fact]
    public void Every_ladder_gives_its_reason() => Sample((_, ladder) =>
    {
        Assert.NotEmpty(ladder.Reasons);
        Assert.All(ladder.Reasons, reason => Assert.EndsWith(".", reason, StringComparison.Ordinal));
    });

    [Fact]
    public void What_a_part_sings_is_the_pattern_from_its_own_tonic() => Sample((c, ladder) =>
    {
        ExerciseDemands demands = ExerciseDemands.Of(c.Exercise.Pattern!, c.Exercise.Mode);
        Assert.All(ladder.Rungs.SelectMany(rung => rung.Parts.Select(part => (rung.Tonic, part))), at =>
        {
            Pitch tonic = at.Tonic.Octaves(at.part.Octaves);
            Assert.Equal(demands.Low, Interval.Between(tonic, at.part.Span.Low));
            Assert.Equal(demands.High, Interval.Between(tonic, at.part.Span.High));
        });
    });

    [Fact]
    public void Live_changes_keep_what_has_been_sung_and_add_one_key() => Gen.Select(AnyCase, Gen.Int[0, 40]).Sample((c, at) =>
    {
        IReadOnlyList<Rung> rungs = LadderBuilder.Build(c.Exercise, c.Parts, c.Spec).Rungs;
        if (rungs.Count == 0)
        {
            return;
        }

        int index = at % rungs.Count;
        LadderExtension longer = LadderEdit.OneMoreKey(c.Exercise, c.Parts, c.Spec, rungs, index);
        Assert.Equal(rungs.Take(index + 1), longer.Rungs.Take(index + 1));
        Assert.Equal(rungs.Select(Key).Distinct().Count() + 1, longer.Rungs.Select(Key).Append(Key(longer.Added)).Distinct().Count());
        Assert.Equal(longer.BeyondExtreme.Count > 0, longer.Warning.Length > 0);
        Assert.All(longer.Added.Parts.Where(part => part.Sings), part => Assert.True(part.Part.Range.Extreme.Contains(part.Span)));

        IReadOnlyList<Rung> turned = LadderEdit.TurnRound(rungs, index);
        Assert.Equal(rungs.Take(index + 1), turned.Take(index + 1));
        Assert.Equal(rungs[0].Tonic, turned[^1].Tonic);
    });

    /// <summary>Each part by an id of its own, as in every choir's file: two equal ranges may be drawn.</summary>
    private static Part[] Named(Part[] parts) => [.. parts.Select((part, index) => part with { Id = $"p{index}" })];

    private static int Key(Rung rung) => rung.Tonic.Midi;

    /// <summary>The rounded-down share of the way from comfortable to extreme.</summary>
    private static int Allowed(Pitch comfortable, Pitch extreme, LadderSpec spec) =>
        comfortable.Midi + (int)Math.Truncate((extreme.Midi - comfortable.Midi) * spec.ReachPercent / 100.0);

    private static PitchRange Between(int low, int high) => new(KeySpelling.TonicFor(low, Mode.Major), KeySpelling.TonicFor(high, Mode.Major));

    private static void Sample(Action<(Exercise Exercise, Part[] Parts, LadderSpec Spec), KeyLadder> law) =>
        AnyCase.Sample(c => law(c, LadderBuilder.Build(c.Exercise, c.Parts, c.Spec)));
}
