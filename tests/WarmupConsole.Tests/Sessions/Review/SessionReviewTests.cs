using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Sessions.Marks;
using WarmupConsole.Tests.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Review;

public sealed class SessionReviewTests
{
    [Fact]
    public void Real_minutes_talk_rounds_and_keys_are_counted_step_by_step()
    {
        SessionReview review = Of(new SampleLog().Started()
            .After(5, new StepStarted(0, "counted-breath", []))
            .After(20, new RoundStarted(0, 0)).After(12, new RoundStarted(0, 1))
            .After(12, new StepStarted(1, "five-note-scale", [60, 61]))
            .After(15, new LeadInStarted(1, 0)).Rung(1, 0, "C4", 7).Rung(1, 1, "Db4", 7).Begin(1, 2, "D4", 7)
            .After(3, new RungEnded(1, 2, false)).After(0, new RunEnded("ended")));
        Assert.Equal(
            [
                new(0, "counted-breath", "Counted breath", TimeSpan.FromSeconds(44), TimeSpan.FromSeconds(20), 0, 2),
                new(1, "five-note-scale", "Five note scale", TimeSpan.FromSeconds(44), TimeSpan.FromSeconds(15), 2, 0) { HasKeys = true },
            ],
            review.Steps);
        Assert.Equal(("ended", "2027-02-16.yaml", TimeSpan.FromSeconds(93)), (review.Ending, review.PlanName, review.Spent));
        Assert.Equal(2, review.Rungs.Count);
    }

    [Fact]
    public void Time_in_which_the_machine_was_off_is_not_counted_and_the_run_is_cut_off_until_its_end()
    {
        SampleLog log = new SampleLog().Started().After(10, new StepStarted(0, "five-note-scale", [60])).Rung(0, 0, "C4", 7)
            .Restarted(600, new RunResumed(0, 1)).Rung(0, 1, "Db4", 7);
        Assert.Equal((TimeSpan.FromSeconds(34), "cut off", 2), (Of(log).Spent, Of(log).Ending, Of(log).Steps[0].Rungs));
        Assert.Equal("finished", Of(log.After(0, new RunEnded("finished"))).Ending);
        Assert.Equal(TimeSpan.FromSeconds(634), Of(log).End - Of(log).Start);
    }

    [Fact]
    public void Each_part_is_exposed_to_the_pitches_of_the_pattern_in_its_own_octave()
    {
        SessionReview review = Of(TwoKeys());
        Assert.Equal(["C4", "D4", "E4", "F4", "G4"], review.Rungs[0].Pitches["alto"].Select(pitch => pitch.ToAscii()));
        Assert.Equal(["Db3", "Eb3", "F3", "Gb3", "Ab3"], review.Rungs[1].Pitches["bass"].Select(pitch => pitch.ToAscii()));
        Assert.Equal((0, 2), Count(review, "alto", "F4"));
        Assert.Equal((0, 1), Count(review, "alto", "Ab4"));
        Assert.Equal((0, 0), Count(review, "alto", "Ab3"));
    }

    [Fact]
    public void In_an_exercise_in_parts_each_part_is_exposed_to_its_own_line()
    {
        Exercise inParts = SampleExercises.All["five-note-scale"] with
        {
            Voices = [new(["alto"], PatternText.Parse("1 3 5").Value!, Beats.Zero), new(["tenor", "bass"], PatternText.Parse("1:4").Value!, Beats.Zero)],
        };
        RungStarted rung = new(0, 0, "C4", 60, 80_000, ["soprano", "alto", "tenor", "bass"], [60, 60, 48, 48], [67, 67, 48, 48]);

        SessionReview review = SessionReview.From(
            new SampleLog().Started().After(1, new StepStarted(0, inParts.Id, [60])).After(1, rung).After(9, new RungEnded(0, 0, true)).Records,
            SampleChoir.Four,
            new Dictionary<string, Exercise> { [inParts.Id] = inParts });

        Assert.Equal(
            ["C4 D4 E4 F4 G4", "C4 E4 G4", "C3", "C3"],
            new[] { "soprano", "alto", "tenor", "bass" }.Select(part => string.Join(' ', review.Rungs[0].Pitches[part].Select(pitch => pitch.ToAscii()))));
    }

    [Fact]
    public void Of_an_unknown_exercise_only_lowest_and_highest_are_known()
    {
        SessionReview review = Of(new SampleLog().Started().After(1, new StepStarted(0, "lost", [60])).Rung(0, 0, "C4", 7));
        Assert.Equal(["C4", "G4"], review.Rungs[0].Pitches["soprano"].Select(pitch => pitch.ToAscii()));
        Assert.Equal("lost", review.Steps[0].Title);
    }

    /// <summary>Place and pitch of a mark in C, and which alto pitches it means there.</summary>
    [Theory]
    [InlineData("", null, "C4 D4 E4 F4 G4")]
    [InlineData("top", null, "G4")]
    [InlineData("bottom", null, "C4")]
    [InlineData("degree 3", null, "E4")]
    [InlineData("degree 3, coming down", null, "E4")]
    [InlineData("on D", null, "D4")]
    [InlineData("on F♭", null, "E4")]
    [InlineData("on B♯", null, "C4")]
    [InlineData("again", null, "C4 D4 E4 F4 G4")]
    [InlineData("", 64, "E4")]
    [InlineData("", 52, "E4")]
    [InlineData("", 76, "E4")]
    [InlineData("", 80, "Ab4")]
    [InlineData("", 32, "Ab4")]
    [InlineData("", 70, "Bb4")]
    public void A_mark_means_as_few_pitches_as_it_says(string place, int? pitch, string meant)
    {
        SessionReview review = Of(TwoKeys().Mark(new(1, 0, 0, "raw", ["alto"], "flat", "C4", Pitch: pitch, Place: place)));
        Assert.Equal(meant, string.Join(' ', review.Marks[0].Pitches.Select(p => p.ToAscii())));
        Assert.All(review.Marks[0].Pitches.Where(review.Rungs[0].Pitches["alto"].Contains), p => Assert.Equal(1, Count(review, "alto", p.ToAscii()).Marked));
        Assert.Equal(0, review.Counts.Where(count => count.Part != "alto").Sum(count => count.Marked));
    }

    [Fact]
    public void A_key_that_was_named_finds_the_last_rung_in_that_key()
    {
        SessionReview review = Of(TwoKeys().Mark(new(1, 0, 1, "a f in C", ["alto"], "flat", "C4", Named: true)));
        Assert.Equal((0, Pitch.MiddleC), (review.Marks[0].Rung, review.Marks[0].Key));
        Assert.Equal((1, 1), Count(review, "alto", "C4"));
    }

    [Fact]
    public void Two_marks_on_one_rung_count_once_and_praise_counts_nothing()
    {
        SessionReview review = Of(TwoKeys().Mark(new(1, 0, 1, "a f", ["alto"], "flat", "Db4")).Mark(new(2, 0, 1, "a st", ["alto"], "strained", "Db4")).Mark(new(3, 0, 1, "s g", ["soprano"], "good", "Db4")));
        Assert.Equal((1, 2), Count(review, "alto", "F4"));
        Assert.Equal((0, 2), Count(review, "soprano", "F4"));
        Assert.True(review.Marks[2].IsPraise);
    }

    [Fact]
    public void A_mark_of_everyone_is_one_of_each_part_that_sang_and_a_free_note_of_none()
    {
        SessionReview review = Of(TwoKeys().Mark(new(1, 0, 1, "late", [], "late", "Db4")).Mark(new(2, 0, 1, "open a window", [], null, "Db4")));
        Assert.Equal(["soprano", "alto", "tenor", "bass", ""], review.Marks.Select(mark => mark.Part));
        Assert.Equal((1, 2), Count(review, "bass", "F3"));
    }

    [Fact]
    public void Marks_taken_back_are_gone_and_moved_ones_count_where_they_belong()
    {
        SessionReview review = Of(TwoKeys().Mark(new(1, 0, 1, "a f", ["alto"], "flat", "Db4")).Mark(new(2, 0, 1, "s f", ["soprano"], "flat", "Db4"))
            .After(1, new MarkUndone(2)).After(1, new MarkMoved(1, 0, 0)));
        ReviewMark mark = Assert.Single(review.Marks);
        Assert.Equal((1, "alto", 0), (mark.Id, mark.Part, mark.Rung));
        Assert.Equal(((1, 1), (0, 1)), (Count(review, "alto", "C4"), Count(review, "alto", "Ab4")));
    }

    [Fact]
    public void A_repeated_rung_is_sung_twice_and_a_broken_one_counts_only_when_marked()
    {
        SampleLog log = TwoKeys().Rung(0, 1, "Db4", 7).Begin(0, 2, "D4", 7).After(3, new RungEnded(0, 2, false));
        Assert.Equal(((0, 2), (0, 0)), (Count(Of(log), "alto", "Ab4"), Count(Of(log), "alto", "A4")));
        Assert.Equal((1, 1), Count(Of(log.Mark(new(1, 0, 2, "a f", ["alto"], "flat", "D4"))), "alto", "A4"));
    }

    [Fact]
    public void A_log_without_records_is_refused() =>
        Assert.Contains("nothing to review", Assert.Throws<ArgumentException>(() => Of(new SampleLog())).Message, StringComparison.Ordinal);

    [Fact]
    public void The_review_in_words_names_steps_marks_and_the_table()
    {
        string text = ReviewText.Write(Of(Marked()), SampleChoir.Four);
        Assert.Equal(
            """
            The Lantern Quay Singers, 16 February 2027, 19:30 to 19:30, plan 2027-02-16.yaml

            Led to its end in 0:45: 1 step.
            To work on: tenors and basses sharp (once, in D♭).
            No praise was marked; 1 free note below.

            Steps
               1  Five note scale                    0:30  of it talk 0:02, 2 keys

            Marks
              tenors and basses slightly sharp at the top in D♭ (Five note scale), typed: tb s
              noted: win dow (Five note scale), typed: win dow

            Pitches with marks: in how many keys each was marked / sung; a mark without a pitch counts for all pitches of its key
                    sopranos     altos    tenors    basses
            """.ReplaceLineEndings("\n").Split('\n'),
            text.Split('\n')[..15]);
        Assert.Contains("  A♭3          ·         ·     1 / 1     1 / 1\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n  F4 ", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', text);
    }

    [Fact]
    public void What_was_cut_is_told_with_the_time_it_saved()
    {
        SessionReview review = Of(TwoKeys().After(0, new CutTaken(0, "five-note-scale", 4, 68)).After(0, new CutTaken(3, "no-such-exercise", 0, 90)));
        Assert.Equal([new(0, "Five note scale", false, TimeSpan.FromSeconds(68)), new(3, "no-such-exercise", true, TimeSpan.FromSeconds(90))], review.Cuts);
        string words = ReviewText.Write(review, SampleChoir.Four);
        Assert.Matches("Cut, as it ran late\n   1  Five note scale +no way back, saved 1:08\n   4  no-such-exercise +left out, saved 1:30\n", words);
    }

    [Fact]
    public void All_pitches_are_listed_when_asked_for()
    {
        string text = ReviewText.Write(Of(Marked()), SampleChoir.Four, allPitches: true);
        Assert.Contains("\nPitches: in how many keys", text, StringComparison.Ordinal);
        Assert.Contains("  F4       0 / 2     0 / 2         ·         ·\n", text, StringComparison.Ordinal);
        Assert.Contains("  A♭3          ·         ·     1 / 1     1 / 1\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_marks_there_is_no_table()
    {
        string text = ReviewText.Write(Of(TwoKeys()), SampleChoir.Four);
        Assert.EndsWith("\nNothing was marked.\n", text, StringComparison.Ordinal);
        Assert.Contains("\nNothing to work on was marked.\nNo praise was marked.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_that_never_began_and_rounds_are_told_as_what_they_are()
    {
        SampleLog log = new SampleLog().Started().After(5, new StepStarted(0, "shoulder-rolls", [])).After(20, new RoundStarted(0, 0)).After(10, new StepStarted(1, "counted-breath", []))
            .After(5, new StepStarted(2, "hum-thirds", [60])).After(15, new RunEnded("ended"));
        SessionReview review = SessionReview.From(log.Records, SampleChoir.Four, SampleExercises.All, SamplePlans.Calm);
        string[] lines = ReviewText.Write(review, SampleChoir.Four).Split('\n');

        Assert.Equal(["trill-fifth", "five-note-scale", "thirds-climb", "arpeggio", "sighing-hum"], review.NotBegun.Select(step => step.ExerciseId));
        Assert.Equal("Ended early after 0:55 of 15 minutes: 1 of 8 steps, 2 passed over, 5 never begun.", lines[2]);
        Assert.EndsWith("talk 0:20, 1 round", lines[7], StringComparison.Ordinal);
        Assert.EndsWith("passed over: no round was begun", lines[8], StringComparison.Ordinal);
        Assert.EndsWith("passed over: no key was sung to its end", lines[9], StringComparison.Ordinal);
        Assert.Equal("   4  Trill fifth                           –  never began", lines[10]);
    }

    [Theory]
    [InlineData("finished", "Led to its end in 0:39 of 15 minutes: ")]
    [InlineData("ended", "Ended early after 0:39 of 15 minutes: ")]
    [InlineData("", "Cut off after 0:39 of 15 minutes: ")]
    public void The_first_sentence_says_how_it_ended(string why, string sentence)
    {
        SampleLog log = why.Length == 0 ? TwoKeys() : TwoKeys().After(0, new RunEnded(why));
        Assert.StartsWith(sentence, Summary(log)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_plan_no_end_is_early()
    {
        SessionReview review = SessionReview.From(TwoKeys().After(0, new RunEnded("ended")).Records, SampleChoir.Four, SampleExercises.All);
        Assert.Contains("\nLed for 0:39: ", ReviewText.Write(review, SampleChoir.Four), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("paused", 0)]
    [InlineData("silenced", 360)]
    public void A_pause_is_no_time_spent_and_a_silence_is(string hold, int seconds)
    {
        TimeSpan before = SessionReview.From(TwoKeys().Records, SampleChoir.Four, SampleExercises.All).Spent;
        SampleLog held = TwoKeys().After(0, new HoldChanged(hold)).After(360, new HoldChanged("none")).After(1, new RunEnded("ended"));
        Assert.Equal(before + TimeSpan.FromSeconds(seconds + 1), SessionReview.From(held.Records, SampleChoir.Four, SampleExercises.All).Spent);
    }

    [Fact]
    public void A_run_that_goes_on_is_not_cut_off_and_its_other_steps_are_to_come()
    {
        SessionReview review = SessionReview.From(TwoKeys().Records, SampleChoir.Four, SampleExercises.All, SamplePlans.Calm) with { Ending = SessionReview.Running };
        string text = ReviewText.Write(review, SampleChoir.Four);
        Assert.Contains("\nStill running, so far 0:39 of 15 minutes: 1 of 8 steps, 7 to come.\n", text, StringComparison.Ordinal);
        Assert.Matches(@"\n   8  Sighing hum +–  to come\n", text);
    }

    [Fact]
    public void What_was_marked_most_comes_first_and_no_more_than_three_are_named()
    {
        SampleLog log = TwoKeys().Mark(new(1, 0, 1, "", ["soprano"], "late", "Db4")).Mark(new(2, 0, 0, "", ["alto"], "flat", "C4")).Mark(new(3, 0, 1, "", ["alto"], "flat", "Db4", Strength: "very"))
            .Mark(new(4, 0, 1, "", ["alto"], "dark", "Db4")).Mark(new(5, 0, 1, "", ["bass"], "thin", "Db4")).Mark(new(6, 0, 1, "", [], "good", "Db4"));
        Assert.Equal("To work on: altos flat (2 times, in C and D♭), sopranos late (once, in D♭), altos dark (once, in D♭) and 1 more.", Summary(log)[1]);
        Assert.Equal("Went well: everyone good (once, in D♭).", Summary(log)[2]);
    }

    /// <summary>The parts that were marked on a pitch, and how the mark is told.</summary>
    [Theory]
    [InlineData("alto", "altos flat on E4 (in C)")]
    [InlineData("tenor", "tenors flat on E3 (in C)")]
    [InlineData("alto tenor", "altos and tenors flat on E in C")]
    public void A_named_pitch_is_told_in_the_octave_that_was_sung(string parts, string sentence) => Assert.Contains(
        $"  {sentence} (Five note scale)",
        ReviewText.Write(Of(TwoKeys().Mark(new(1, 0, 0, "raw", parts.Split(' '), "flat", "C4", Pitch: 64))), SampleChoir.Four),
        StringComparison.Ordinal);

    private static string[] Summary(SampleLog log) =>
        ReviewText.Write(SessionReview.From(log.Records, SampleChoir.Four, SampleExercises.All, SamplePlans.Calm), SampleChoir.Four).Split('\n')[2..5];

    private static SampleLog Marked() => TwoKeys().Mark(new(1, 0, 1, "tb s", ["tenor", "bass"], "sharp", "Db4", Place: "top", Strength: "slightly"))
        .Mark(new(2, 0, 1, "win\u001bdow", [], null)).After(4, new RunEnded("finished"));

    /// <summary>The five-note scale in C and D flat.</summary>
    private static SampleLog TwoKeys() => new SampleLog().Started()
        .After(15, new StepStarted(0, "five-note-scale", [60, 61])).Rung(0, 0, "C4", 7).Rung(0, 1, "Db4", 7);

    private static SessionReview Of(SampleLog log) => SessionReview.From(log.Records, SampleChoir.Four, SampleExercises.All);

    private static (int Marked, int Sung) Count(SessionReview review, string part, string pitch) =>
        review.Counts.Where(count => count.Part == part && count.Midi == Pitch.Parse(pitch).Midi).Select(count => (count.Marked, count.Sung)).SingleOrDefault();
}
