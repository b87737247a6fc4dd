using WarmupConsole.App;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.App;

public sealed class ExercisesAddTests
{
    private const string Choir = """
        format: 1
        name: The Lantern Quay Singers
        parts:
          - {id: soprano, extreme: C4-G5, comfortable: C4-F5}

        """;

    private const string Saved = """
        format: 1
        exercises:
          - id: ferry-bells
            title: Ferry bells
            stage: sung
            tempo: {default: 96, from: 72, to: 120}
            purposes: [tuning.scale]
            talk: 15
            mode: major
            pattern: "5 4 3 2 1:2"
            syllables: "noo/u ~ ~ nah/ɑ ~"
            dynamics: [mp, f]
            articulation: legato
            instruction: Ring every one.

        """;

    /// <summary>Scale, line, tempo, touch, loudness, syllables, purposes, stage, title, id, instruction, save.</summary>
    private static readonly string[] Answers = ["", "5 4 3 2 1:2", "96", "", "mp f", "noo ~ ~ nah ~", "tuning.scale", "", "Ferry bells", "", "Ring every one.", "y"];

    [Fact]
    public void It_is_asked_for_step_by_step_and_saved_as_a_file_of_its_own()
    {
        using Desk desk = Ready(Answers);
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.Equal(Saved, File.ReadAllText(desk.PathOf("exercises", "ferry-bells.yaml")));
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "show", "ferry-bells"));
    }

    [Fact]
    public void What_it_asks_of_the_voice_is_shown_before_purposes_and_stage_are_proposed()
    {
        using Desk desk = Ready(Answers);
        desk.Run("exercises", "add");
        int shown = desk.Output.IndexOf("7 semitones, 0 to 7 from the tonic; top note 5 on [u]; largest leaps 0 up, 2 down", StringComparison.Ordinal);
        Assert.InRange(desk.Output.IndexOf("What it trains [resonance.open, tuning.scale, ", StringComparison.Ordinal), shown, int.MaxValue);
        Assert.Contains("[sung]: ", desk.Output, StringComparison.Ordinal);
        Assert.Contains("[ferry-bells]: ", desk.Output, StringComparison.Ordinal);
        Assert.InRange(shown, 1, int.MaxValue);
    }

    [Fact]
    public void It_is_played_back_from_middle_C_and_ended()
    {
        using Desk desk = Ready(Answers);
        desk.Run("exercises", "add");
        Assert.Equal([67, 65, 64, 62, 60], desk.Given);
        Assert.Equal(desk.Given.Order(), desk.Ended.Order());
    }

    [Fact]
    public void A_line_may_be_played_on_the_piano()
    {
        using Desk desk = Ready("minor", "", "", "", "", "", "", "oo", "", "", "Home again", "", "", "y");
        desk.Heard = new(desk.Clock, PlayedInput.Line((69, 500), (71, 500), (72, 1000)));
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Exercise saved = Read(desk, "home-again");
        Assert.Equal("1 2 3:2", PatternText.Write(saved.Pattern!));
        Assert.Equal(120, saved.Tempo.Default.BeatsPerMinute);
        Assert.Contains("Which note is 1, the tonic? [A4]: ", desk.Output, StringComparison.Ordinal);
        Assert.True(desk.Heard.IsClosed);
    }

    [Fact]
    public void Another_tonic_may_be_named_as_the_choir_names_notes_and_the_line_be_corrected()
    {
        using Desk desk = Ready("", "", "", "x", "c1", "5 3 2 1", "", "", "", "", "", "", "Falling", "", "", "y");
        desk.Write(Choir + "notes: german\n", "choir.yaml");
        desk.Heard = new(desk.Clock, PlayedInput.Line((67, 500), (64, 500), (60, 1000)));
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.Contains("Which note is 1, the tonic? [g1]: ", desk.Output, StringComparison.Ordinal);
        Assert.Contains("Heard: 5 3 1:2", desk.Output, StringComparison.Ordinal);
        Assert.Equal("5 3 2 1", PatternText.Write(Read(desk, "falling").Pattern!));
    }

    [Fact]
    public void Without_a_piano_to_hear_or_when_nothing_is_played_the_line_is_asked_for_again()
    {
        using Desk desk = Ready("", "", "1 3 1", "", "", "", "", "", "", "One three one", "", "", "y");
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.Contains("Nothing is heard.", desk.Output, StringComparison.Ordinal);

        using Desk silent = Ready("", "", "", "1 3 1", "", "", "", "", "", "", "One three one", "", "", "y");
        silent.Heard = new(silent.Clock);
        Assert.Equal(ExitCodes.Ok, silent.Run("exercises", "add"));
        Assert.Contains(AppTexts.NothingHeard, silent.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "1 2 x", "'x' is no degree")]
    [InlineData(2, "fast", "'default' must be a number from 20 to 300 bpm")]
    [InlineData(2, "900", "which is out of range (20 to 300 bpm)")]
    [InlineData(3, "loudly", "write one of legato, staccato, marcato, glide")]
    [InlineData(4, "mf fff", "'dynamics' cannot be 'fff'")]
    [InlineData(5, "noo nah", "2 syllables for 5 sounding notes")]
    [InlineData(6, "tuning.scal", "'purposes' cannot be 'tuning.scal'")]
    [InlineData(7, "body", "a line of degrees is sung, so the stage cannot be body")]
    [InlineData(8, "", "Title: Title: ")]
    [InlineData(9, "five-note-scale", "there is an exercise 'five-note-scale' already")]
    public void What_cannot_be_is_told_and_only_that_is_asked_again(int question, string wrong, string said)
    {
        using Desk desk = Ready([.. Answers[..question], wrong, .. Answers[question..]]);
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.Contains(said, desk.Output, StringComparison.Ordinal);
        Assert.Equal(Saved, File.ReadAllText(desk.PathOf("exercises", "ferry-bells.yaml")));
    }

    [Theory]
    [InlineData(12, "n")]
    [InlineData(12, "")]
    [InlineData(5, null)]
    public void Nothing_is_written_on_refusal_and_nothing_typed_is_lost(int answered, string? then)
    {
        using Desk desk = Ready([.. Answers[..Math.Min(answered, 11)], .. then is null ? Array.Empty<string>() : [then]]);
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.False(Directory.Exists(desk.PathOf("exercises")));
        Assert.Contains(AppTexts.NotAdded, desk.Output, StringComparison.Ordinal);
        Assert.Contains("warmup exercises add --mode \"major\" --line \"5 4 3 2 1:2\" --tempo \"96\"", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_given_by_options_is_not_asked()
    {
        using Desk desk = Ready("", "96", "", "noo ~ ~ nah ~", "", "", "Ring every one.", "y");
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add", "--line", "5 4 3 2 1:2", "--title", "Ferry bells", "--dynamics", "mp f", "--purposes", "tuning.scale"));
        Assert.Equal(Saved, File.ReadAllText(desk.PathOf("exercises", "ferry-bells.yaml")));
    }

    [Fact]
    public void By_options_alone_it_works_with_nobody_there()
    {
        using Desk desk = new(answers: null);
        desk.Write(Choir, "choir.yaml");
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add", "--line", "1 2 3 2 1", "--title", "Up a third", "--syllables", "mm"));
        Exercise saved = Read(desk, "up-a-third");
        Assert.Equal(Stage.Humming, saved.Stage);
        Assert.Equal(PurposeRules.Served(saved), saved.Purposes);
        Assert.Empty(desk.Given);

        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add", "--line", "1 2 3 2 1", "--title", "Up a third"));
        Assert.True(File.Exists(desk.PathOf("exercises", "up-a-third-2.yaml")));
    }

    [Fact]
    public void Bad_options_are_told_all_at_once_and_nothing_is_written()
    {
        using Desk desk = Ready();
        Assert.Equal(ExitCodes.BadInput, desk.Run("exercises", "add", "--yes", "--title", "Ferry"));
        Assert.Contains(AppTexts.AddNeeds, desk.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCodes.BadInput, desk.Run("exercises", "add", "--yes", "--title", "Ferry", "--line", "1 y", "--tempo", "9", "--id", "No id"));
        Assert.Contains("--line: ", desk.Errors, StringComparison.Ordinal);
        Assert.Contains("--tempo: ", desk.Errors, StringComparison.Ordinal);
        Assert.Contains("--id: ", desk.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.PathOf("exercises")));
    }

    [Fact]
    public void A_file_that_is_there_already_is_not_overwritten_and_what_was_typed_is_shown()
    {
        using Desk desk = Ready(Answers);
        desk.Write("format: 1\nexercises:\n" + "  - {id: other, title: Other, stage: sung, pattern: \"1\", tempo: {default: 60, from: 60, to: 60}}\n", "exercises", "ferry-bells.yaml");
        Assert.Equal(ExitCodes.BadInput, desk.Run("exercises", "add"));
        Assert.Contains("nothing is overwritten", desk.Errors, StringComparison.Ordinal);
        Assert.Contains("--instruction \"Ring every one.\"", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_demo_it_is_kept_beside_the_settings_and_found_again()
    {
        using Desk desk = Ready(Answers);
        desk.Write(Choir + "demo: true\n", "choir.yaml");
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "add"));
        Assert.False(Directory.Exists(desk.PathOf("exercises")));
        Assert.Equal(ExitCodes.Ok, desk.Run("exercises", "show", "ferry-bells"));
    }

    private static Desk Ready(params string[] answers)
    {
        Desk desk = new(answers);
        desk.Write(Choir, "choir.yaml");
        return desk;
    }

    private static Exercise Read(Desk desk, string id) =>
        ExerciseFile.Read(id, File.ReadAllBytes(desk.PathOf("exercises", id + ".yaml"))).Value![0];
}
