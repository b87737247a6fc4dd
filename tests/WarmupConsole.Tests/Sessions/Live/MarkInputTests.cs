using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Tests.Sessions.Live;

public class MarkInputTests
{
    [Fact]
    public void A_mark_belongs_to_the_rung_of_its_first_letter_and_does_not_disturb_the_music()
    {
        LiveDriver driver = LiveSituations.SecondRung();
        MarkAnchor anchor = driver.Session.AnchorAt(driver.Now);

        driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung).Send(new LiveInput.MarkKept("a f", anchor));

        LiveMark mark = driver.Session.Marks.Single();
        Assert.Equal((1, 1, "altos flat in D♭", false), (mark.Id, mark.Anchor.Rung, mark.Echo, mark.IsFlushed));
        MarkMade made = Assert.IsType<MarkMade>(driver.NewestEvents.Single());
        Assert.Equal(
            (1, 1, 1, "a f", "flat", "Db4", false, null, anchor.At.Nanoseconds),
            (made.Id, made.Step, made.Rung, made.Raw, made.Kind, made.Key, made.KeyNamed, made.Pitch, made.Nanoseconds));
        Assert.Equal(["alto"], made.Parts);
    }

    [Fact]
    public void The_newest_mark_is_taken_back_and_its_number_never_used_again()
    {
        LiveDriver driver = Marked("a f", "b strained").Send(new LiveInput.UndoMark());

        Assert.Equal(new MarkUndone(2), driver.NewestEvents.Single());
        Assert.Equal("a f", driver.Session.Marks.Single().Content.Raw);
        Mark(driver, "t good");
        Assert.Equal(3, driver.Session.Marks[^1].Id);
    }

    [Fact]
    public void The_newest_mark_moves_a_rung_back_with_its_key_but_not_beyond_the_first()
    {
        LiveDriver driver = Marked("a f").Send(new LiveInput.MoveMarkBack());

        Assert.Equal(new MarkMoved(1, 1, 0), driver.NewestEvents.Single());
        Assert.Equal("altos flat in C", driver.Session.Marks.Single().Echo);

        driver.Send(new LiveInput.MoveMarkBack());
        Assert.Equal("This mark already belongs to the first key of its step.", driver.Session.Notice!.Text);
        Assert.Empty(driver.Newest);
    }

    [Fact]
    public void Marks_of_one_line_are_logged_one_by_one_and_moved_and_taken_back_together()
    {
        LiveDriver driver = Marked("b good", "s a bit f, a s");
        Assert.Equal(["basses good in D♭", "sopranos slightly flat in D♭", "altos sharp in D♭"], driver.Session.Marks.Select(mark => mark.Echo));
        Assert.Equal([(2, "s a bit f, a s", "slightly"), (3, "s a bit f, a s", "")], driver.NewestEvents.Cast<MarkMade>().Select(made => (made.Id, made.Raw, made.Strength)));

        driver.Send(new LiveInput.MoveMarkBack());
        Assert.Equal([new MarkMoved(2, 1, 0), new MarkMoved(3, 1, 0)], driver.NewestEvents);
        Assert.Equal(["basses good in D♭", "sopranos slightly flat in C", "altos sharp in C"], driver.Session.Marks.Select(mark => mark.Echo));

        driver.Send(new LiveInput.UndoMark());
        Assert.Equal([new MarkUndone(2), new MarkUndone(3)], driver.NewestEvents);
        Assert.Equal("basses good in D♭", Assert.Single(driver.Session.Marks).Echo);
    }

    [Fact]
    public void A_mark_of_an_earlier_step_moves_along_the_keys_of_that_step()
    {
        LiveDriver driver = Marked("a f").Act(LiveAction.StepOn).Send(new LiveInput.MoveMarkBack());

        Assert.Equal("C4", driver.Session.Marks.Single().Anchor.Tonic?.ToAscii());
    }

    [Fact]
    public void A_pin_keeps_its_moment_and_its_words_come_later()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.PinMoment());
        MarkAnchor pinned = driver.Session.Pins.Single().Anchor;
        MarkMade made = Assert.IsType<MarkMade>(driver.NewestEvents.Single());
        Assert.Equal((1, 1, 1, "", null, "Db4"), (made.Id, made.Step, made.Rung, made.Raw, made.Kind, made.Key));
        Assert.Equal("pinned in D♭", driver.Session.Marks[0].Echo);

        driver.RunTo(LiveState.Breath).RunTo(LiveState.Rung);
        Mark(driver, "t good");
        driver.Send(new LiveInput.MarkKept("a f", driver.Session.AnchorAt(driver.Now), 1));

        MarkWorded worded = Assert.IsType<MarkWorded>(driver.NewestEvents.Single());
        Assert.Equal((1, "a f", "flat", "Db4"), (worded.Id, worded.Raw, worded.Kind, worded.Key));
        LiveMark newest = driver.Session.Marks[^1];
        Assert.Equal((1, "altos flat in D♭", pinned, false), (newest.Id, newest.Echo, newest.Anchor, newest.IsFlushed));
        Assert.Empty(driver.Session.Pins);
        Assert.Equivalent(SessionFacts.Fold(driver.Events), driver.Session.Facts());
    }

    [Fact]
    public void Words_for_a_pin_that_was_taken_back_are_a_mark_of_their_own_at_that_moment()
    {
        LiveDriver driver = LiveSituations.SecondRung().Send(new LiveInput.PinMoment());
        MarkAnchor pinned = driver.Session.Marks[0].Anchor;
        driver.Send(new LiveInput.UndoMark()).Send(new LiveInput.MarkKept("a f", pinned, 1));

        Assert.Equal((2, "altos flat in D♭"), (driver.Session.Marks.Single().Id, driver.Session.Marks[0].Echo));
        Assert.IsType<MarkMade>(driver.NewestEvents.Single());
    }

    [Fact]
    public void A_pin_moves_a_rung_back_like_any_mark() =>
        Assert.Equal("pinned in C", LiveSituations.SecondRung().Send(new LiveInput.PinMoment()).Send(new LiveInput.MoveMarkBack()).Session.Pins.Single().Echo);

    [Fact]
    public void Marks_are_confirmed_up_to_the_one_the_log_holds()
    {
        LiveDriver driver = Marked("a f", "b strained").Send(new LiveInput.MarksFlushed(1));

        Assert.Equal([true, false], driver.Session.Marks.Select(mark => mark.IsFlushed));
    }

    [Fact]
    public void A_moved_mark_is_confirmed_again_once_the_log_holds_the_move()
    {
        LiveDriver driver = Marked("a f").Send(new LiveInput.MoveMarkBack()).Send(new LiveInput.MarksFlushed(1));
        Assert.False(driver.Session.Marks[0].IsFlushed);

        driver.Send(new LiveInput.MarksFlushed(2));
        Assert.True(driver.Session.Marks[0].IsFlushed);
    }

    [Fact]
    public void Without_a_mark_there_is_nothing_to_take_back() =>
        Assert.Equal("There is no mark to take back or move.", LiveSituations.SecondRung().Send(new LiveInput.UndoMark()).Session.Notice!.Text);

    [Fact]
    public void Marks_are_kept_after_the_end_too()
    {
        LiveDriver driver = LiveSituations.Of(LiveState.Finished);

        Mark(driver, "everyone tired");

        Assert.Single(driver.Session.Marks);
    }

    private static LiveDriver Marked(params string[] raw)
    {
        LiveDriver driver = LiveSituations.SecondRung();
        Array.ForEach(raw, text => Mark(driver, text));
        return driver;
    }

    private static void Mark(LiveDriver driver, string raw) => driver.Send(new LiveInput.MarkKept(raw, driver.Session.AnchorAt(driver.Now)));
}
