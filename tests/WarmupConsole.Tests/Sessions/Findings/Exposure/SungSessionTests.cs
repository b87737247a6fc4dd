using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Findings.Exposure;

public class SungSessionTests
{
    [Fact]
    public void A_rung_asks_each_part_for_the_pitches_of_its_line_in_its_octave()
    {
        SungSession session = Fold(Started("five-up-down").Rung(0, 0, "C4", 7));
        ExposedRung rung = Assert.Single(session.Rungs);
        Assert.Equal([60, 62, 64, 65, 67], rung.LineOf("alto")!.Pitches.Select(pitch => pitch.Midi));
        Assert.Equal([48, 50, 52, 53, 55], rung.LineOf("bass")!.Pitches.Select(pitch => pitch.Midi));
        Assert.All(rung.LineOf("bass")!.Pitches, pitch => Assert.Equal((0.5, "u", 3), (pitch.Beats, pitch.Vowel, pitch.Loudness)));
        Assert.True(rung is { IsWhole: true, MilliBpm: 80_000, Tonic: 60 });
    }

    [Fact]
    public void Of_an_unknown_exercise_only_the_ends_are_known_and_it_is_counted()
    {
        SungSession session = Fold(Started("vanished").Rung(0, 0, "C4", 7));
        Assert.Equal([60, 67], session.Rungs[0].LineOf("alto")!.Pitches.Select(pitch => pitch.Midi));
        Assert.Equal(1, session.UnknownRungs);
    }

    [Fact]
    public void A_named_key_means_the_last_rung_in_it_for_certain()
    {
        SungSession session = Fold(Ladder().Mark(new(1, 0, 2, "altos flat in Db", ["alto"], "flat", "Db", Named: true)));
        Assert.Equal([new RungWeight(1, 1)], Assert.Single(session.Marks).Candidates);
    }

    [Fact]
    public void A_moved_mark_means_the_rung_it_was_moved_to()
    {
        SungSession session = Fold(Ladder().Mark(new(1, 0, 2, "a f", ["alto"], "flat")).After(1, new MarkMoved(1, 0, 0)));
        Assert.Equal([new RungWeight(0, 1)], Assert.Single(session.Marks).Candidates);
    }

    [Fact]
    public void A_mark_in_the_first_second_of_a_rung_most_likely_means_the_one_before()
    {
        SungSession session = Fold(Ladder().Begin(0, 3, "Eb4", 7).Mark(new(1, 0, 3, "a f", ["alto"], "flat")));
        HeardMark mark = Assert.Single(session.Marks);
        Assert.Equal(2, mark.Candidates[0].Rung);
        Assert.Contains(mark.Candidates, candidate => candidate.Rung == 3);
        Assert.Equal(1, mark.Candidates.Sum(candidate => candidate.Weight), 9);
        Assert.False(mark.IsCertain);
    }

    [Fact]
    public void A_mark_well_into_a_long_rung_most_likely_means_that_one()
    {
        SungSession session = Fold(Ladder().Begin(0, 3, "Eb4", 7).After(8, new TimelineChanged(80_000, 0, 0)).Mark(new(1, 0, 3, "a f", ["alto"], "flat")));
        Assert.Equal(3, Assert.Single(session.Marks).Candidates[0].Rung);
    }

    [Fact]
    public void A_named_pitch_leaves_only_rungs_that_hold_it()
    {
        // F sharp 4 is the fourth of D flat; C has no such note, nor has D as its neighbour in time.
        SungSession session = Fold(Ladder().Mark(new(1, 0, 2, "altos flat on Gb4", ["alto"], "flat", Pitch: 66)));
        Assert.All(Assert.Single(session.Marks).Candidates, candidate => Assert.True(session.Rungs[candidate.Rung].LineOf("alto")!.Has(66)));
    }

    [Fact]
    public void Marks_taken_back_and_free_notes_are_left_out()
    {
        SungSession session = Fold(Ladder()
            .Mark(new(1, 0, 2, "a f", ["alto"], "flat")).After(1, new MarkUndone(1))
            .Mark(new(2, 0, 2, "what a view", [], null)));
        Assert.Empty(session.Marks);
    }

    [Fact]
    public void Before_anything_was_sung_a_mark_means_no_rung() =>
        Assert.Empty(Assert.Single(Fold(Started("five-up-down").Mark(new(1, 0, 0, "a f", ["alto"], "flat"))).Marks).Candidates);

    [Fact]
    public void A_break_between_two_epochs_adds_no_minutes()
    {
        SungSession session = Fold(Ladder().Restarted(3600, new RunResumed(0, 2)).Rung(0, 2, "D4", 7));
        Assert.InRange(session.Rungs[^1].Minute, 0.5, 1.5);
        Assert.Equal([1, 1, 1, 2], session.Rungs.Select(rung => rung.Epoch));
    }

    [Fact]
    public void Lists_that_do_not_fit_and_numbers_out_of_range_are_passed_over()
    {
        SungSession session = Fold(Started("five-up-down")
            .After(1, new RungStarted(0, 0, "?", 60, 0, ["alto", "bass", "tenor"], [60, 200], [67]))
            .After(1, new RungEnded(7, 7, true)));
        Assert.Equal(["alto"], Assert.Single(session.Rungs).Lines.Select(line => line.Part));
    }

    private static SampleLog Started(string exercise) => new SampleLog().Started().After(1, new StepStarted(0, exercise, [60, 61, 62]));

    private static SampleLog Ladder() => Started("five-up-down").Rung(0, 0, "C4", 7).Rung(0, 1, "Db4", 7).Rung(0, 2, "D4", 7);

    private static SungSession Fold(SampleLog log) => SungSession.From("evening", log.Records, SeasonChoir.Choir, SeasonPatterns.Exercises, new LineBook());
}
