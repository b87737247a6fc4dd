using Terminal.Gui.Input;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class ScreenControlTests
{
    private readonly FakeLiveConsole _console = new(LiveFixture.Rung);
    private readonly ScreenControl _control;

    public ScreenControlTests() => _control = new(_console);

    [Fact]
    public void A_mark_typed_slowly_belongs_to_the_rung_of_its_first_letter()
    {
        MarkAnchor first = _console.Session.AnchorAt(_console.Now);
        Write("altos");
        _console.Show(_console.Session with { RungIndex = 2 });
        _console.Now += TimeSpan.FromSeconds(4);
        _control.Press(Key.Space);
        Write("flat");
        _control.Press(Key.Enter);

        Assert.Equal(new LiveInput.MarkKept("altos flat", first), Assert.Single(_console.Posted));
        Assert.False(_control.Line.IsOpen);
    }

    [Fact]
    public void Signs_that_drive_write_while_the_line_is_open()
    {
        Write("b♭ - 2.5 / + ? ; é");

        Assert.Empty(_console.Posted);
        Assert.Equal("b♭ - 2.5 / + ? ; é", _control.Line.Text);
    }

    [Theory]
    [InlineData("12 bars too slow")]
    [InlineData("Überall zu laut")]
    public void A_digit_or_a_letter_opens_the_line_and_the_blanks_behind_it_write(string mark)
    {
        Write(mark);
        _control.Press(Key.Enter);

        Assert.Equal(mark, Assert.IsType<LiveInput.MarkKept>(Assert.Single(_console.Posted)).Raw);
    }

    [Fact]
    public void Leaving_keeps_the_mark_whose_line_is_still_open()
    {
        Write("a tired");
        _control.Press(Key.Q.WithCtrl);
        Assert.Empty(_console.Posted);
        _control.Press(Key.Q.WithCtrl);

        Assert.True(_control.Leaves);
        Assert.Equal("a tired", Assert.IsType<LiveInput.MarkKept>(Assert.Single(_console.Posted)).Raw);
    }

    [Fact]
    public void Enter_that_bounces_after_a_mark_adds_no_key()
    {
        Write("a f");
        _control.Press(Key.Enter);
        _console.Now += TimeSpan.FromSeconds(0.3);
        _control.Press(Key.Enter);
        Assert.IsType<LiveInput.MarkKept>(Assert.Single(_console.Posted));

        _console.Now += TimeSpan.FromSeconds(0.6);
        _control.Press(Key.Enter);
        Assert.Equal(new LiveInput.Act(LiveAction.OneMoreKey), _console.Posted[^1]);
    }

    [Fact]
    public void Backspace_held_down_erases_the_line_and_takes_no_mark_back()
    {
        Write("ab");
        for (int repeats = 0; repeats < 40; repeats++)
        {
            _control.Press(Key.Backspace);
            _console.Now += TimeSpan.FromSeconds(0.03);
        }

        Assert.False(_control.Line.IsOpen);
        Assert.Empty(_console.Posted);
    }

    [Fact]
    public void A_key_that_closed_the_line_writes_and_keeps_again_at_once_when_a_new_line_is_open()
    {
        Write("a");
        _control.Press(Key.Enter);
        Write("b");
        _control.Press(Key.Enter);

        Assert.Equal(["a", "b"], _console.Posted.Select(input => Assert.IsType<LiveInput.MarkKept>(input).Raw));
    }

    [Fact]
    public void Tab_silences_with_the_line_open_and_keeps_what_was_written()
    {
        Write("altos f");
        _control.Press(Key.Tab);

        Assert.Equal(new LiveInput.Act(LiveAction.Silence), Assert.Single(_console.Posted));
        Assert.Equal("altos f", _control.Line.Text);
    }

    [Fact]
    public void A_key_that_does_nothing_now_says_why_and_posts_nothing()
    {
        _console.Refused[LiveAction.TurnRound] = "There is nothing to turn round.";
        _control.Press(new Key(','));

        Assert.Empty(_console.Posted);
        Assert.Equal("There is nothing to turn round.", _control.Model().Notice?.Text);
    }

    [Fact]
    public void Silence_is_posted_even_when_it_seems_to_do_nothing()
    {
        _console.Refused[LiveAction.Silence] = "Nothing sounds.";
        _control.Press(Key.Tab);

        Assert.Single(_console.Posted);
    }

    [Fact]
    public void Without_a_mark_undo_and_moving_say_so()
    {
        _console.Show(LiveFixture.Introduce);
        _control.Press(Key.Backspace);
        Assert.Equal(ScreenTexts.NothingToUndo, _control.Model().Notice?.Text);
        _control.Press(new Key(';'));
        Assert.Equal(ScreenTexts.NothingToMove, _control.Model().Notice?.Text);
        Assert.Empty(_console.Posted);
    }

    [Fact]
    public void Leaving_while_it_runs_asks_once()
    {
        _control.Press(Key.Q.WithCtrl);
        Assert.False(_control.Leaves);
        Assert.Equal(ScreenTexts.LeaveAgain, _control.Model().Notice?.Text);
        _control.Press(Key.Q.WithCtrl);
        Assert.True(_control.Leaves);
    }

    [Theory]
    [InlineData(" ")]
    [InlineData("a")]
    [InlineData("5")]
    public void Another_key_takes_the_question_back(string between)
    {
        _control.Press(Key.Q.WithCtrl);
        Write(between);
        _control.Press(Key.Q.WithCtrl);

        Assert.False(_control.Leaves);
    }

    [Fact]
    public void Before_and_after_the_warm_up_one_press_leaves()
    {
        _console.Show(LiveFixture.Finished);
        _control.Press(Key.Q.WithCtrl);
        Assert.True(_control.Leaves);
    }

    [Fact]
    public void The_help_page_closes_with_its_key_and_for_a_mark()
    {
        _control.Press(new Key('?'));
        Assert.True(_control.Model().HelpOpen);
        _control.Press(new Key('?'));
        Assert.False(_control.Model().HelpOpen);
        _control.Press(new Key('?'));
        _control.Press(new Key('a'));
        Assert.False(_control.Model().HelpOpen);
    }

    [Fact]
    public void Escape_and_foreign_keys_do_nothing()
    {
        foreach (Key key in (Key[])[Key.Esc, Key.F1, Key.PageDown, Key.Z.WithCtrl, Key.C.WithCtrl, Key.A.WithAlt, Key.Delete])
        {
            _control.Press(key);
        }

        Assert.Empty(_console.Posted);
        Assert.False(_control.Line.IsOpen);
        Assert.False(_control.Leaves);
    }

    [Fact]
    public void A_sign_without_meaning_says_where_the_keys_are()
    {
        _control.Press(new Key('('));
        Assert.False(_control.Line.IsOpen);
        Assert.Equal(ScreenTexts.UnknownKey, _control.Model().Notice?.Text);
    }

    [Fact]
    public void Blanks_alone_are_not_kept()
    {
        _control.Paste("   ");
        _control.Press(Key.Enter);

        Assert.Empty(_console.Posted);
        Assert.Equal(ScreenTexts.NothingWritten, _control.Model().Notice?.Text);
    }

    [Fact]
    public void The_newer_word_is_shown()
    {
        _control.Press(new Key('('));
        _console.Show(_console.Session with { Notice = new("The port is gone.", true, _console.Now + TimeSpan.FromSeconds(1)) });
        Assert.Equal("The port is gone.", _control.Model().Notice?.Text);
    }

    private void Write(string text)
    {
        foreach (System.Text.Rune rune in text.EnumerateRunes())
        {
            _control.Press(new Key(rune.Value));
        }
    }
}
