using System.Text.RegularExpressions;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.Storage.Folders;

/// <summary>The shipped exercises as data: enough of each kind, each of them whole, none of them twice.</summary>
public sealed class CatalogueTests
{
    private static readonly ExerciseShelf All = Catalogue.Exercises;

    private static readonly IReadOnlyList<Exercise> Sung = [.. All.Where(exercise => exercise.IsSung)];

    // The "amateur" choral compasses of an open notation program's instrument table: soprano C4-G5, alto G3-D5, tenor C3-A4, bass F2-C4.
    private static readonly Part[] PublishedParts =
    [
        Part("soprano", 0, "C4-G5", "women", "upper"),
        Part("alto", 0, "G3-D5", "women", "lower"),
        Part("tenor", -1, "C3-A4", "men", "upper"),
        Part("bass", -1, "F2-C4", "men", "lower"),
    ];

    [Fact]
    public void Each_exercise_of_the_shipped_catalogue_is_read_alone_under_its_id() => Assert.Equal(All.Select(exercise => exercise.Id), Catalogue.Exercises.Ids);

    [Fact]
    public void It_holds_at_least_90_exercises() => Assert.True(All.Count >= 90, $"{All.Count}");

    [Theory]
    [InlineData(Stage.Body, 6)]
    [InlineData(Stage.Breathing, 12)]
    [InlineData(Stage.Humming, 10)]
    [InlineData(Stage.LipTrill, 10)]
    [InlineData(Stage.Slide, 4)]
    [InlineData(Stage.Sung, 44)]
    [InlineData(Stage.Settling, 4)]
    public void It_holds_enough_for_each_stage(Stage stage, int atLeast) =>
        Assert.True(All.Count(exercise => exercise.Stage == stage) >= atLeast);

    [Fact]
    public void It_holds_at_least_8_in_parts_and_each_purpose_of_the_ensemble_among_them()
    {
        Exercise[] inParts = [.. Sung.Where(exercise => exercise.Voices.Count > 0)];

        Assert.True(inParts.Length >= 8, $"{inParts.Length}");
        Assert.All([Purpose.Chords, Purpose.Canon, Purpose.Drone, Purpose.Blend], purpose => Assert.Contains(inParts, exercise => exercise.Purposes.Contains(purpose)));
    }

    [Fact]
    public void Lines_of_their_own_are_for_parts_or_groups_of_a_mixed_choir() => Assert.Empty(
        Sung.SelectMany(exercise => exercise.Voices).SelectMany(voice => voice.Parts)
            .Except(["soprano", "alto", "tenor", "bass", "women", "men", "upper", "lower"]));

    [Fact]
    public void Every_purpose_is_served_by_five_exercises_at_least() =>
        Assert.DoesNotContain(Enum.GetValues<Purpose>(), purpose => All.Count(exercise => exercise.Purposes.Contains(purpose)) < 5);

    [Fact]
    public void Every_stated_purpose_is_borne_out_by_what_the_exercise_asks_for() =>
        Assert.Empty(from exercise in All
                     from purpose in exercise.Purposes
                     where !PurposeRules.Serves(exercise, purpose)
                     select $"{exercise.Id}: {PurposeData.Id(purpose)} asks for {PurposeRules.Asks(purpose)}");

    [Fact]
    public void Ids_and_titles_are_unique()
    {
        Assert.Equal(All.Count, All.Select(exercise => exercise.Id).Distinct().Count());
        Assert.Equal(All.Count, All.Select(exercise => exercise.Title).Distinct().Count());
    }

    [Fact]
    public void No_two_exercises_are_the_same_notes_on_the_same_syllables_with_the_same_touch() =>
        Assert.Empty(Sung.GroupBy(Content).Where(same => same.Count() > 1).Select(same => string.Join(" = ", same.Select(exercise => exercise.Id))));

    [Fact]
    public void Minor_and_modal_lines_are_among_them() =>
        Assert.Empty(Enum.GetValues<Mode>().Except(Sung.Select(exercise => exercise.Mode)));

    [Theory]
    [InlineData("pentatonic-wave", "0 2 4 7 9")]
    [InlineData("pentatonic-minor-fall", "0 3 5 7 10 12")]
    [InlineData("whole-tone-climb", "0 2 4 6 8")]
    [InlineData("chromatic-fall", "0 1 2 3 4 5 6 7")]
    public void Scales_other_than_major_have_their_notes(string id, string semitones) => Assert.Equal(
        semitones,
        string.Join(' ', Semitones(Sung.Single(exercise => exercise.Id == id)).Distinct().Order()));

    [Fact]
    public void Every_exercise_says_what_to_do_and_what_to_listen_for() =>
        Assert.Empty(All.Where(exercise => exercise.Instruction.Length == 0 || exercise.Listen.Length == 0 || exercise.Purposes.Count == 0).Select(exercise => exercise.Id));

    [Fact]
    public void Every_instruction_is_its_own_one_or_two_sentences()
    {
        Assert.Empty(All.GroupBy(exercise => exercise.Instruction).Where(same => same.Count() > 1).Select(same => same.Key));
        Assert.Empty(All.Where(exercise => Regex.Count(exercise.Instruction, @"[.!?](\s|$)") is < 1 or > 2).Select(exercise => $"{exercise.Id}: {exercise.Instruction}"));
    }

    [Fact]
    public void Whoever_sings_an_octave_or_more_in_one_line_is_cautioned() => Assert.Empty(
        Sung.Where(exercise => exercise.Caution.Length == 0 && exercise.Lines.Any(line => ExerciseDemands.Of(line, exercise.Mode).SpanSemitones >= 12)).Select(exercise => exercise.Id));

    [Fact]
    public void Holds_of_the_breath_are_short() => Assert.Empty(
        All.Where(exercise => exercise.Phases.Any(phase => phase is { Action: BreathAction.Hold, Counts: > 4 })).Select(exercise => exercise.Id));

    [Fact]
    public void Every_breathing_exercise_says_what_to_do_when_dizzy() =>
        Assert.Empty(All.Where(exercise => exercise.Stage == Stage.Breathing && !exercise.Caution.Contains("breathes normally and sits down", StringComparison.Ordinal)).Select(exercise => exercise.Id));

    [Fact]
    public void Every_vowel_is_on_the_IPA_chart_and_every_pattern_has_its_harmony() =>
        Assert.Empty(Sung.Where(exercise => exercise.Harmony.Count == 0
            || exercise.Lines.Any(line => SyllableText.Write(line).Length == 0)
            || exercise.Lines.SelectMany(line => line.Notes).Any(note => note.Syllable is { } syllable && VowelData.Height(syllable.Vowel) is null)).Select(exercise => exercise.Id));

    [Fact]
    public void Half_closed_stages_are_sung_half_closed() =>
        Assert.Empty(Sung.Where(exercise => exercise.Stage is Stage.Humming or Stage.LipTrill
            && !VowelData.IsHalfClosed(exercise.Pattern!.Notes[0].Syllable!.Vowel)).Select(exercise => exercise.Id));

    [Fact]
    public void Every_exercise_has_a_key_for_each_part_of_a_published_table() =>
        Assert.Empty(from exercise in Sung
                     from part in PublishedParts
                     where LadderBuilder.Build(exercise, [part], new()).Rungs.Count == 0
                     select $"{exercise.Id}: {part.Id}");

    private static IEnumerable<int> Semitones(Exercise exercise) =>
        exercise.Pattern!.Notes.Where(note => note.Degree is not null).Select(note => ModeData.IntervalOf(exercise.Mode, note.Degree!.Value).Semitones);

    private static string Content(Exercise exercise) =>
        $"{exercise.Mode}|{exercise.Articulation}|{string.Join('|', exercise.Lines.Select(line => PatternText.Write(line) + SyllableText.Write(line)))}";

    private static Part Part(string id, int placement, string range, params string[] groups)
    {
        PitchRange compass = PitchRangeText.Parse(range).Value!;
        return new(id, id, [], groups, 0, placement, new(compass, compass));
    }
}
