using CsCheck;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Voices;

public sealed class RangeWalkTests
{
    /// <summary>Middle of A3–C5: MIDI 57 to 72, so 64, E4.</summary>
    private static readonly VoiceRange Alto = new(Range("G3", "D5"), Range("A3", "C5"));

    private static readonly Gen<RangeAnswer[]> AnyAnswers = Gen.Enum<RangeAnswer>().Array[0, 120];

    [Fact]
    public void It_begins_in_the_middle_and_goes_up_by_half_steps()
    {
        RangeWalk walk = new(Alto);
        Assert.Equal((RangeStage.EasyUp, "E4", (RangeWalk?)null), (walk.Stage, walk.Note.ToString(), walk.Before));
        Assert.Equal("F4", walk.After(RangeAnswer.StillGood).Note.ToString());
    }

    [Fact]
    public void All_four_ends_are_found_in_order()
    {
        RangeWalk walk = new(Alto);
        Assert.Equal(
            [RangeStage.EasyUp, RangeStage.UtmostUp, RangeStage.EasyDown, RangeStage.UtmostDown, RangeStage.Done],
            ((RangeWalk[])[walk, walk = Upto(walk, 71), walk = Upto(walk, 75), walk = Upto(walk, 58), walk = Upto(walk, 53)]).Select(at => at.Stage));
        Assert.Equal("F3–E♭5, B♭3–B4", $"{walk.Found.Extreme}, {walk.Found.Comfortable}");
    }

    [Fact]
    public void After_the_last_easy_note_it_goes_on_from_there_and_after_the_top_again_from_the_middle()
    {
        RangeWalk beyond = Upto(new(Alto), 71);
        Assert.Equal(72, beyond.Midi);
        RangeWalk down = Upto(beyond, 74);
        Assert.Equal((RangeStage.EasyDown, 64), (down.Stage, down.Midi));
        Assert.Equal((RangeStage.UtmostDown, 59), (Upto(down, 60).Stage, Upto(down, 60).Midi));
    }

    [Fact]
    public void A_note_that_is_no_more_makes_the_one_before_the_last()
    {
        RangeWalk walk = new RangeWalk(Alto).After(RangeAnswer.StillGood).After(RangeAnswer.StillGood).After(RangeAnswer.NotThisOne);
        Assert.Equal("F4", walk.Found.Comfortable.High.ToString());
        Assert.Equal("F4", walk.After(RangeAnswer.NotThisOne).Found.Extreme.High.ToString());
    }

    [Fact]
    public void A_first_note_that_is_not_easy_is_the_end_all_the_same() =>
        Assert.Equal((64, 65), (new RangeWalk(Alto).After(RangeAnswer.NotThisOne).Found.Comfortable.High.Midi, new RangeWalk(Alto).After(RangeAnswer.NotThisOne).Midi));

    [Fact]
    public void Nobody_is_taken_further_than_an_octave_beyond_what_was_known()
    {
        RangeWalk walk = new(Alto);
        int notes = 0;
        while (walk.Stage == RangeStage.EasyUp)
        {
            Assert.InRange(walk.Midi, 64, 74 + RangeWalk.FarthestBeyondSemitones);
            walk = walk.After(RangeAnswer.StillGood);
            notes++;
        }

        Assert.Equal((23, 86), (notes, walk.Found.Comfortable.High.Midi));
    }

    [Fact]
    public void One_answer_can_be_taken_back()
    {
        RangeWalk walk = new RangeWalk(Alto).After(RangeAnswer.StillGood);
        Assert.Same(walk, walk.After(RangeAnswer.LastOne).Before);
    }

    [Fact]
    public void Whatever_is_answered_the_comfortable_range_lies_inside_the_extreme_one_and_holds_the_middle() => AnyAnswers.Sample(answers =>
    {
        RangeWalk walk = answers.Aggregate(new RangeWalk(Alto), (at, answer) => at.After(answer));
        Assert.True(walk.Found.Extreme.Contains(walk.Found.Comfortable));
        Assert.True(walk.Found.Comfortable.Contains(64));
    });

    [Fact]
    public void Once_done_nothing_changes()
    {
        RangeWalk done = Enumerable.Repeat(RangeAnswer.LastOne, 4).Aggregate(new RangeWalk(Alto), (at, answer) => at.After(answer));
        Assert.Equal(RangeStage.Done, done.Stage);
        Assert.Same(done, done.After(RangeAnswer.StillGood));
    }

    /// <summary>Good until this note, which is the last one.</summary>
    private static RangeWalk Upto(RangeWalk walk, int midi)
    {
        while (walk.Midi != midi)
        {
            walk = walk.After(RangeAnswer.StillGood);
        }

        return walk.After(RangeAnswer.LastOne);
    }

    private static PitchRange Range(string low, string high) => new(Pitch.Parse(low), Pitch.Parse(high));
}
