using Terminal.Gui.Input;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Screens;
using Place = Terminal.Gui.Drawing.Cell;

namespace WarmupConsole.Tests.Tui;

/// <summary>What a row puts into the library's buffer, and what of it is sent.</summary>
public sealed class RowViewTests : IDisposable
{
    private readonly FakeLiveConsole _console = new(LiveFixture.Rung);
    private readonly ConsoleWindow _window;
    private readonly Headless _screen;

    public RowViewTests()
    {
        _window = new(_console, Theme.Colours);
        _screen = new(_window, 80, 24);
    }

    private Place[,] Places => _screen.App.Driver!.GetOutputBuffer().Contents!;

    public void Dispose()
    {
        _screen.Dispose();
        _window.Dispose();
    }

    [Fact]
    public void Only_what_lies_between_the_first_and_the_last_changed_cell_is_sent()
    {
        Place[,] before = Sent();
        Dictionary<int, int[]> sent = [];
        foreach (Terminal.Gui.ViewBase.View row in _window.SubViews)
        {
            row.DrawComplete += (_, _) => sent[row.Frame.Y] = [.. Columns().Where(column => Places[row.Frame.Y, column].IsDirty)];
        }

        _console.Now += TimeSpan.FromSeconds(0.7);
        _screen.Advance(TimeSpan.FromMilliseconds(40));
        Assert.Contains(sent.Values, columns => columns.Length is > 0 and < 80);
        foreach ((int row, int[] columns) in sent)
        {
            int[] changed = [.. Columns().Where(column => Places[row, column].Grapheme != before[row, column].Grapheme || Places[row, column].Attribute != before[row, column].Attribute)];
            Assert.Equal(changed.Length == 0 ? [] : [.. Enumerable.Range(changed[0], changed[^1] - changed[0] + 1)], columns);
        }
    }

    [Fact]
    public void A_character_two_columns_wide_takes_both_and_gives_both_back()
    {
        _screen.Press(Key.X).Press(Key.Backspace);
        string before = _screen.Screen;
        _screen.Type("歌x").Press(Key.Backspace);
        Assert.Contains("歌", _screen.Screen);
        int row = Enumerable.Range(0, 24).First(row => Columns().Any(column => Places[row, column].Grapheme == "歌"));
        int wide = Columns().First(column => Places[row, column].Grapheme == "歌");
        Assert.Equal("", Places[row, wide + 1].Grapheme);
        Assert.Equal(before, _screen.Press(Key.Backspace).Screen);
    }

    private static IEnumerable<int> Columns() => Enumerable.Range(0, 80);

    /// <summary>A copy of the buffer, in which everything counts as sent.</summary>
    private Place[,] Sent()
    {
        for (int row = 0; row < Places.GetLength(0); row++)
        {
            foreach (int column in Columns())
            {
                Places[row, column].IsDirty = false;
            }
        }

        return (Place[,])Places.Clone();
    }
}
