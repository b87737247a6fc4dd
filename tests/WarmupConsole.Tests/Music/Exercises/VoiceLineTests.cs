using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Exercises;

/// <summary>Exercises in parts: who sings which line, and what that asks of each.</summary>
public class VoiceLineTests
{
    private static readonly IReadOnlyList<Part> Choir = Samples.Choir();

    [Fact]
    public void A_part_sings_the_first_line_that_names_it_or_its_group_and_else_the_pattern()
    {
        Exercise exercise = Samples.InParts("1 2 3", ("bass", "1:3", 0), ("men, alto", "5:3", 0));

        Assert.Equal(["1 2 3", "5:3", "5:3", "1:3"], Choir.Select(part => PatternText.Write(exercise.PatternFor(part)!)));
        Assert.Equal(["1 2 3", "1:3", "5:3"], exercise.Lines.Select(PatternText.Write));
    }

    [Fact]
    public void A_later_entry_begins_with_a_rest() =>
        Assert.Equal(["1 2 1:4 -:2", "-:2 1 2 1:4"], Samples.InParts("1 2 1:4 -:2", ("men", "1 2 1:4", 2)).Lines.Select(PatternText.Write));

    [Fact]
    public void Breathing_has_no_lines()
    {
        Exercise breathing = Samples.Exercise("1") with { Pattern = null };

        Assert.Empty(breathing.Lines);
        Assert.Null(breathing.PatternFor(Choir[0]));
    }

    [Fact]
    public void Each_part_has_the_span_of_its_own_line()
    {
        Rung rung = LadderBuilder.Build(Samples.InParts("1 3 5:2", ("alto", "1 3:3", 0), ("men", "1:4", 0)), Choir, new()).Rungs[0];

        Assert.Equal(["C4-G4", "C4-E4", "C3-C3", "C3-C3"], rung.Parts.Select(part => PitchRangeText.Write(part.Span)));
    }

    // Conservative alto C5 at the top: an octave on the tonic fits in C alone, the drone on it up to C5.
    [Fact]
    public void A_ladder_climbs_as_far_as_the_lines_allow_not_the_pattern()
    {
        KeyLadder alike = LadderBuilder.Build(Samples.Exercise("1 8"), [Choir[1]], new() { Shape = LadderShape.Up });
        KeyLadder drone = LadderBuilder.Build(Samples.InParts("1 8", ("alto", "1:2", 0)), [Choir[1]], new() { Shape = LadderShape.Up });

        Assert.Equal((60, 72), (alike.Rungs[^1].Tonic.Midi, drone.Rungs[^1].Tonic.Midi));
    }

    [Fact]
    public void A_line_too_wide_for_its_part_is_named_with_its_own_span()
    {
        KeyLadder none = LadderBuilder.Build(Samples.InParts("1 2", ("bass", "1 15", 0)), Choir, new());

        Assert.Contains("No key fits the basses: the pattern spans 24 semitones", Assert.Single(none.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_are_those_of_the_line_that_asks_most()
    {
        ExerciseFigures figures = ExerciseFigures.Of(Samples.InParts("1:2 3:2", ("men", "1:1/2 2:1/2 3:1/2 2:1/2", 0), ("alto", "1:4", 0)));

        Assert.Equal(2 * 88 / 60.0, figures.NotesPerSecond, 9);
        Assert.Equal(4 * 60 / 88.0, figures.LongestToneSeconds, 6);
        Assert.Equal(3 + 1 + (3 * 2), figures.Complexity);
    }

    [Theory]
    [InlineData(Purpose.Canon, "1 2 3 - -", "1 2 3", 2, true)]
    [InlineData(Purpose.Canon, "1 2 3 - -", "1 2 3", 0, false)]
    [InlineData(Purpose.Canon, "1 2 3 - -", "3 2 1", 2, false)]
    [InlineData(Purpose.Drone, "1 2 3 4", "1:4", 0, true)]
    [InlineData(Purpose.Drone, "1 2 3 4", "1:2 5:2", 0, false)]
    [InlineData(Purpose.Drone, "1:4", "5:4", 0, false)]
    public void Lines_of_their_own_can_make_a_canon_or_a_drone(Purpose purpose, string pattern, string voice, int offset, bool serves)
    {
        Exercise exercise = Samples.InParts(pattern, ("men", voice, offset));

        Assert.Equal(serves, PurposeRules.Serves(exercise, purpose));
    }

    [Fact]
    public void Three_tones_at_once_are_a_chord_and_octaves_count_once()
    {
        Assert.True(PurposeRules.Serves(Samples.InParts("5:2", ("alto", "3:2", 0), ("men", "1:2", 0)), Purpose.Chords));
        Assert.False(PurposeRules.Serves(Samples.InParts("8:2", ("alto", "5:2", 0), ("men", "1:2", 0)), Purpose.Chords));
        Assert.False(PurposeRules.Serves(Samples.InParts("5:1 -", ("alto", "3:1", 1), ("men", "1:2", 0)), Purpose.Chords));
    }
}
