using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Ladders;

public class LadderEditTests
{
    private static readonly Exercise Exercise = Samples.Exercise(Samples.FiveNotes);
    private static readonly IReadOnlyList<Part> Parts = Samples.Choir();

    [Theory]
    [InlineData(0, "C")]
    [InlineData(2, "C D♭ D D♭ C")]
    [InlineData(5, "C D♭ D E♭ E F E E♭ D D♭ C")]
    [InlineData(8, "C D♭ D E♭ E F E E♭ D D♭ C")]
    public void Turning_round_goes_back_from_the_present_key_to_the_first(int index, string keys) =>
        Assert.Equal(keys, Keys(LadderEdit.TurnRound(Ladder(new()), index)));

    [Fact]
    public void Turning_round_on_a_ladder_that_only_climbs_comes_back_too() =>
        Assert.Equal("C D♭ D D♭ C", Keys(LadderEdit.TurnRound(Ladder(new() { Shape = LadderShape.Up }), 2)));

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void One_more_key_moves_the_turning_point_that_is_ahead_or_sounding(int index) =>
        Assert.Equal("C D♭ D E♭ D D♭ C", Keys(More(new() { MostKeys = 3 }, index).Rungs));

    [Fact]
    public void One_more_key_on_the_way_back_is_added_at_the_end() =>
        Assert.Equal("C D♭ D D♭ C B", Keys(More(new() { MostKeys = 3 }, 3).Rungs));

    [Theory]
    [InlineData(LadderShape.Up, "F", "C D♭ D E♭")]
    [InlineData(LadderShape.Down, "F", "F E E♭ D")]
    [InlineData(LadderShape.DownAndBack, "F", "F E E♭ D E♭ E F")]
    public void Every_shape_goes_one_key_further_in_its_own_direction(LadderShape shape, string start, string keys)
    {
        LadderSpec spec = new() { Shape = shape, MostKeys = 3, Start = shape == LadderShape.Up ? null : WarmupConsole.Music.Pitches.Pitch.Parse(start + "4") };

        Assert.Equal(keys, Keys(More(spec, 1).Rungs));
    }

    [Theory]
    [InlineData(1, 0, "D E♭ D♭")]
    [InlineData(2, 0, "D E♭ D♭ E")]
    [InlineData(2, 2, "D E♭ D♭ E")]
    public void Out_from_the_middle_one_more_key_is_the_next_one_outwards(int lastKey, int index, string keys)
    {
        LadderSpec spec = new() { Shape = LadderShape.OutFromTheMiddle, Start = WarmupConsole.Music.Pitches.Pitch.Parse("D4"), MostKeys = lastKey + 1 };

        Assert.Equal(keys, Keys(More(spec, index).Rungs));
    }

    [Fact]
    public void Out_from_the_middle_turning_round_goes_back_through_the_keys_in_between() => Assert.Equal(
        "D E♭ D♭ E E♭ D",
        Keys(LadderEdit.TurnRound(Ladder(new() { Shape = LadderShape.OutFromTheMiddle, Start = WarmupConsole.Music.Pitches.Pitch.Parse("D4") }), 3)));

    [Theory]
    [InlineData(1, "C D E G♭ E D C")]
    [InlineData(3, "C D E D C B♭")]
    public void One_more_key_keeps_the_size_of_the_steps(int index, string keys) =>
        Assert.Equal(keys, Keys(More(new() { StepSemitones = 2 }, index).Rungs));

    [Fact]
    public void Turning_round_keeps_the_size_of_the_steps() =>
        Assert.Equal("C D E D C", Keys(LadderEdit.TurnRound(Ladder(new() { StepSemitones = 2, Shape = LadderShape.Up }), 2)));

    [Fact]
    public void Nobody_is_warned_who_takes_the_octave()
    {
        LadderExtension longer = More(new() { ReachPercent = 100, TakesOctave = true }, 0);

        Assert.Empty(longer.BeyondExtreme);
        Assert.Equal([0, -1, 0, -1], longer.Added.Parts.Select(part => part.OctaveShift));
    }

    [Fact]
    public void After_turning_round_one_more_key_still_comes_back()
    {
        LadderSpec spec = new() { Shape = LadderShape.Up };
        IReadOnlyList<Rung> turned = LadderEdit.TurnRound(Ladder(spec), 2);

        Assert.Equal("C D♭ D E♭ D D♭ C", Keys(LadderEdit.OneMoreKey(Exercise, Parts, spec, new(turned, []), 2).Rungs));
    }

    [Fact]
    public void A_top_that_is_sung_twice_is_left_after_the_second_time()
    {
        LadderSpec spec = new() { MostKeys = 2 };
        IReadOnlyList<Rung> once = Ladder(spec);
        IReadOnlyList<Rung> twice = [once[0], once[1], once[1], once[2]];

        Assert.Equal("C D♭ D♭ D D♭ C", Keys(LadderEdit.OneMoreKey(Exercise, Parts, spec, new(twice, []), 2).Rungs));
    }

    [Fact]
    public void Inside_the_tolerance_nobody_is_warned_and_all_sing()
    {
        LadderExtension longer = More(new(), 0);

        Assert.Equal("G♭", longer.Added.Tonic.Name);
        Assert.Empty(longer.BeyondExtreme);
        Assert.Equal("", longer.Warning);
        Assert.All(longer.Added.Parts, part => Assert.True(part.Sings));
    }

    [Fact]
    public void Beyond_extreme_the_part_is_named_and_rests()
    {
        LadderExtension longer = More(new() { ReachPercent = 100 }, 0);

        Assert.Equal("A♭", longer.Added.Tonic.Name);
        Assert.Equal(["alto", "bass"], longer.BeyondExtreme.Select(part => part.Id));
        Assert.Equal(
            "In A♭ the altos would need E♭5, a semitone above their highest note D5: they would rest. In A♭ the basses would need E♭4, a semitone above their highest note D4: they would rest.",
            longer.Warning);
        Assert.Equal([true, false, true, false], longer.Added.Parts.Select(part => part.Sings));
    }

    [Fact]
    public void When_all_would_rest_whoever_can_sing_it_at_all_does()
    {
        Part soprano = Samples.Part("Soprano", "C4-C6", "C4-G4", 0);
        LadderSpec spec = new() { ToleranceSemitones = 0 };
        IReadOnlyList<Rung> rungs = LadderBuilder.Build(Exercise, [soprano], spec).Rungs;

        LadderExtension longer = LadderEdit.OneMoreKey(Exercise, [soprano], spec, new(rungs, []), 0);

        Assert.Equal("C D♭ C", Keys(longer.Rungs));
        Assert.True(Assert.Single(longer.Added.Parts).Sings);
        Assert.Equal("", longer.Warning);
    }

    [Fact]
    public void Breathing_has_no_key_to_add() => Assert.Throws<ArgumentException>(() =>
        LadderEdit.OneMoreKey(Exercise with { Pattern = null }, Parts, new(), new(Ladder(new()), []), 0));

    private static IReadOnlyList<Rung> Ladder(LadderSpec spec) => LadderBuilder.Build(Exercise, Parts, spec).Rungs;

    private static LadderExtension More(LadderSpec spec, int index) => LadderEdit.OneMoreKey(Exercise, Parts, spec, new(Ladder(spec), []), index);

    private static string Keys(IEnumerable<Rung> rungs) => string.Join(' ', rungs.Select(rung => rung.Tonic.Name));
}
