using System.Text.RegularExpressions;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public sealed partial class ConsoleWindowTests : IDisposable
{
    private readonly FakeLiveConsole _console = new(LiveFixture.Rung);
    private readonly ConsoleWindow _window;
    private readonly Headless _screen;

    public ConsoleWindowTests()
    {
        _window = new(_console, Theme.Colours);
        _screen = new(_window, 80, 24);
    }

    public void Dispose()
    {
        _screen.Dispose();
        _window.Dispose();
    }

    [Fact]
    public void Keys_reach_the_session_and_marks_the_screen()
    {
        _screen.Type("altos é♭ f").Press(Key.Tab);
        Assert.Contains("mark in D♭, key 2: altos é♭ f", _screen.Screen);
        _screen.Press(Key.Enter, Key.CursorDown);

        Assert.Collection(
            _console.Posted,
            input => Assert.Equal(new LiveInput.Act(LiveAction.Silence), input),
            input => Assert.Equal("altos é♭ f", Assert.IsType<LiveInput.MarkKept>(input).Raw),
            input => Assert.Equal(new LiveInput.Act(LiveAction.GoOn), input));
    }

    [Fact]
    public void A_paste_is_one_mark()
    {
        _screen.App.RaisePasteEvent("basses late\non the leap");
        _screen.Pump();
        Assert.Contains("basses late on the leap", _screen.Screen);
        Assert.Empty(_console.Posted);
    }

    [Fact]
    public void The_screen_follows_the_session()
    {
        _console.Show(LiveFixture.High);
        _screen.Pump();
        Assert.Contains("A♭ major, key 9 of 9", _screen.Screen);
    }

    [Fact]
    public void The_beat_moves_with_the_time_of_the_session()
    {
        Assert.Contains("sing      ○   ●   ○", _screen.Screen);
        _console.Now += TimeSpan.FromSeconds(0.7);
        _screen.Advance(TimeSpan.FromMilliseconds(40));
        Assert.Contains("sing      ○   ○   ●", _screen.Screen);
    }

    [Fact]
    public void A_beat_sends_no_more_than_the_rows_that_changed()
    {
        int rows = _window.SubViews.Count;
        List<int> drawn = [];
        foreach (Terminal.Gui.ViewBase.View row in _window.SubViews)
        {
            row.DrawComplete += (_, _) => drawn.Add(row.Frame.Y);
        }

        _console.Now += TimeSpan.FromSeconds(0.3);
        _screen.Advance(TimeSpan.FromMilliseconds(40));
        Assert.Equal(24, rows);
        Assert.InRange(drawn.Count, 0, 4);
    }

    [Fact]
    public void A_mark_is_called_saved_only_when_it_is()
    {
        _console.Show(LiveFixture.Rung with { Marks = [LiveFixture.Mark(1, "altos flat in E", "flat", ["alto"], false)] });
        Assert.Contains("altos flat in E, key 2, saving…", _screen.Pump().Screen);
        _console.Show(LiveFixture.Rung with { Marks = [LiveFixture.Mark(1, "altos flat in E", "flat", ["alto"], true)] });
        Assert.Contains("altos flat in E, key 2, saved", _screen.Pump().Screen);
    }

    [Fact]
    public void Nothing_but_leaving_twice_ends_the_run()
    {
        _screen.Press(Key.Esc, Key.Q.WithCtrl, Key.Esc, Key.C.WithCtrl, Key.Z.WithCtrl);
        _screen.App.RequestStop();
        _screen.Pump();
        Assert.True(_window.IsRunning);
        Assert.False(_window.StopRequested && !_window.IsRunning);
        _screen.Press(Key.Q.WithCtrl, Key.Q.WithCtrl);
        Assert.True(_window.StopRequested);
    }

    [Fact]
    public void No_binding_of_the_library_is_left() => Assert.Empty(_screen.App.Keyboard.KeyBindings.GetBindings());

    [Fact]
    public void Any_size_is_drawn_and_the_usual_one_comes_back()
    {
        string before = _screen.Screen;
        Random random = new(20270216);
        foreach (LiveSession session in (LiveSession[])[LiveFixture.Rung, LiveFixture.Ready, LiveFixture.Phase, LiveFixture.Silenced, LiveFixture.Finished])
        {
            _console.Show(session);
            for (int turn = 0; turn < 25; turn++)
            {
                _screen.Resize(random.Next(1, 220), random.Next(1, 70)).Type(turn % 5 == 0 ? "x" : "?");
            }

            _screen.Press(Key.Enter);
        }

        _console.Posted.Clear();
        _console.Show(LiveFixture.Rung);
        _console.Now = LiveFixture.Now;
        Assert.Equal(before, _screen.Resize(80, 24).Screen);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(20, 5)]
    public void Without_colours_no_colour_code_is_sent(int width, int height)
    {
        foreach (LiveSession session in (LiveSession[])[LiveFixture.Rung, LiveFixture.Paused, LiveFixture.Ready])
        {
            using ConsoleWindow window = new(new FakeLiveConsole(session), Theme.Monochrome);
            using Headless screen = new(window, width, height);
            Assert.DoesNotMatch(ColourCode(), screen.Ansi);
        }

        Assert.Matches(ColourCode(), _screen.Ansi);
    }

    [Fact]
    public void No_color_is_obeyed_unless_it_is_empty()
    {
        Assert.Same(Theme.Monochrome, Theme.For("1"));
        Assert.Same(Theme.Colours, Theme.For(""));
        Assert.Same(Theme.Colours, Theme.For(null));
    }

    [Theory]
    [MemberData(nameof(Inks))]
    public void Every_ink_has_a_look_in_both_themes(Ink ink)
    {
        Assert.Equal(Color.None, Theme.Monochrome[ink].Foreground);
        Assert.NotEqual(Theme.Colours[ink].Foreground, Theme.Colours[ink].Background);
    }

    public static TheoryData<Ink> Inks() => [.. Enum.GetValues<Ink>()];

    [GeneratedRegex(@"\u001b\[[0-9;]*\b([34]8;[25]|3[0-7]|4[0-7]|9[0-7]|10[0-7])[0-9;]*m")]
    private static partial Regex ColourCode();
}
