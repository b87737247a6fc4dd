using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class MarkLineTests
{
    private static readonly MarkAnchor First = new(2, 3, null, new Moment(10));
    private static readonly MarkAnchor Later = new(2, 4, null, new Moment(20));

    [Fact]
    public void The_first_letter_opens_the_line_and_fixes_what_the_mark_refers_to()
    {
        MarkLine line = MarkLine.Closed.Type("a", First).Type(" f", Later);

        Assert.Equal("a f", line.Text);
        Assert.Equal(("a f", First), line.Kept);
    }

    [Fact]
    public void Erasing_takes_one_letter_as_a_reader_counts_them_and_closes_an_empty_line()
    {
        MarkLine line = MarkLine.Closed.Type("Bé♭", First);

        Assert.Equal("Bé", (line = line.Erase()).Text);
        Assert.Equal("B", (line = line.Erase()).Text);
        Assert.True(line.IsOpen);
        Assert.False(line.Erase().IsOpen);
        Assert.False(MarkLine.Closed.Erase().IsOpen);
    }

    [Fact]
    public void A_line_opened_again_refers_to_the_new_moment() =>
        Assert.Equal(Later, MarkLine.Closed.Type("a", First).Erase().Type("b", Later).Anchor);

    [Fact]
    public void Pasted_lines_and_tabs_become_one_line() =>
        Assert.Equal("altos flat in E", MarkLine.Closed.Type("altos\tflat\r\nin E", First).Text);

    [Fact]
    public void Controls_become_a_visible_sign() => Assert.Equal("a\uFFFD[31m", MarkLine.Closed.Type("a\u001b[31m", First).Text);

    [Fact]
    public void Nothing_written_opens_nothing_and_blanks_keep_nothing()
    {
        Assert.False(MarkLine.Closed.Type("", First).IsOpen);
        Assert.Null(MarkLine.Closed.Type("  ", First).Kept);
        Assert.Null(MarkLine.Closed.Kept);
    }

    [Fact]
    public void Kept_text_has_no_blanks_at_its_ends() => Assert.Equal("t late", MarkLine.Closed.Type(" t late ", First).Kept?.Raw);

    [Fact]
    public void A_very_long_paste_is_cut() =>
        Assert.Equal(MarkLine.MostCharacters, MarkLine.Closed.Type(new string('x', 10_000), First).Text.Length);
}
