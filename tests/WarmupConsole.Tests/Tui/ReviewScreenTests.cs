using Terminal.Gui.Input;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Presentation.Reviewing;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class ReviewScreenTests
{
    public static TheoryData<ReviewView, int, int> Pages()
    {
        TheoryData<ReviewView, int, int> rows = [];
        foreach (ReviewView view in Enum.GetValues<ReviewView>())
        {
            rows.Add(view, 80, 24);
            rows.Add(view, 120, 36);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_of_the_review_is_as_agreed(ReviewView view, int width, int height)
    {
        using ReviewWindow window = new(ReviewFixture.Model, Theme.Monochrome);
        using Headless screen = new(window, width, height);
        screen.Type(view == ReviewView.Help ? "?" : $"{(int)view + 1}");
        GoldenText.Check(
            $"review/{view}-{width}x{height}.txt".ToLowerInvariant(),
            string.Concat(screen.Screen.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd() + "\n")));
    }

    [Fact]
    public void Arrows_go_round_the_pages_and_down_to_the_last_line_and_no_further()
    {
        ReviewControl control = new(ReviewFixture.Model);
        Press(control, Key.CursorLeft);
        Assert.Equal(ReviewView.Help, control.View);
        Press(control, Key.CursorRight, Key.CursorRight, Key.CursorRight);
        Assert.Equal(ReviewView.HeatMap, control.View);
        (int most, int rows) = ReviewPresenter.Room(ReviewFixture.Model, ReviewView.HeatMap, (80, 24));
        Assert.True(most > 0 && rows > 5, $"{most} {rows}");
        Press(control, [.. Enumerable.Repeat(Key.CursorDown, most + 5)]);
        Assert.Equal(ReviewPresenter.Draw(ReviewFixture.Model, ReviewView.HeatMap, most, (80, 24)).ToString(), control.Draw((80, 24)).ToString());
        Press(control, Key.CursorUp);
        Assert.Equal(ReviewPresenter.Draw(ReviewFixture.Model, ReviewView.HeatMap, most - 1, (80, 24)).ToString(), control.Draw((80, 24)).ToString());
    }

    [Fact]
    public void A_screenful_further_ends_where_the_page_ends_and_each_page_keeps_its_place()
    {
        ReviewControl control = new(ReviewFixture.Model);
        Press(control, new Key('3'), Key.Space);
        string there = control.Draw((80, 24)).ToString();
        Press(control, new Key('1'), new Key('3'));
        Assert.Equal(there, control.Draw((80, 24)).ToString());
        Press(control, Key.Home);
        Assert.Contains("lines 1–", control.Draw((80, 24)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Help_has_a_key_and_gives_the_page_back()
    {
        ReviewControl control = new(ReviewFixture.Model);
        Press(control, new Key('5'), new Key('?'));
        Assert.Equal(ReviewView.Help, control.View);
        Press(control, new Key('?'));
        Assert.Equal(ReviewView.Ranges, control.View);
        Press(control, new Key('?'), Key.Esc);
        Assert.Equal((ReviewView.Ranges, false), (control.View, control.Leaves));
    }

    [Fact]
    public void Only_the_way_out_leaves()
    {
        ReviewControl control = new(ReviewFixture.Model);
        Press(control, Key.Esc, Key.Tab, Key.Enter, new Key('x'), new Key('9'), new Key('0'));
        Assert.False(control.Leaves);
        Press(control, Key.Q.WithCtrl);
        Assert.True(control.Leaves);
    }

    [Fact]
    public void Without_a_session_every_page_says_so_in_words()
    {
        foreach (ReviewView view in Enum.GetValues<ReviewView>().Except([ReviewView.Times]))
        {
            string[] body = ReviewPresenter.Draw(ReviewFixture.Empty, view, 0, (80, 24)).ToString().Split('\n')[3..22];
            Assert.Contains(body, line => line.Trim().Length > 0);
        }
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(12, 4)]
    [InlineData(40, 12)]
    [InlineData(300, 90)]
    public void No_size_is_too_small_or_too_large(int width, int height)
    {
        foreach (ReviewView view in Enum.GetValues<ReviewView>())
        {
            Assert.Equal(height, ReviewPresenter.Draw(ReviewFixture.Model, view, 1000, (width, height)).Height);
            Assert.True(ReviewPresenter.Room(ReviewFixture.Model, view, (width, height)).Rows >= 1);
        }
    }

    private static void Press(ReviewControl control, params Key[] keys) => Array.ForEach(keys, key => control.Press(key, (80, 24)));
}
