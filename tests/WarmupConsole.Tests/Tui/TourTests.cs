using WarmupConsole.Sessions.Live;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Tests.Storage;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class TourTests
{
    private const int SlowReadersWordsAMinute = 200;

    [Fact]
    public void Going_on_turns_the_cards_and_only_then_starts_the_warm_up()
    {
        FakeLiveConsole console = new(LiveFixture.Ready) { GivesTour = true };
        ScreenControl control = new(console);
        for (int card = 0; card < TourTexts.Cards.Count; card++)
        {
            Assert.Equal(card, control.Model().Tour);
            control.Press(KeyTableTests.Pressed("Space"));
        }

        Assert.Null(control.Model().Tour);
        Assert.Equal(1, console.Tours);
        Assert.Empty(console.Posted);
        control.Press(KeyTableTests.Pressed("Space"));
        Assert.Equal(new LiveInput.Act(LiveAction.GoOn), Assert.Single(console.Posted));
    }

    [Theory]
    [InlineData("Tab")]
    [InlineData("a")]
    [InlineData("Ctrl+Q")]
    public void Any_other_key_ends_it_and_does_what_it_does(string stroke)
    {
        FakeLiveConsole console = new(LiveFixture.Ready) { GivesTour = true };
        ScreenControl control = new(console);
        control.Press(KeyTableTests.Pressed(stroke));

        Assert.Null(control.Model().Tour);
        Assert.Equal(1, console.Tours);
        Assert.True(stroke switch { "Tab" => console.Posted.Count == 1, "a" => control.Line.Text == "a", _ => control.Leaves });
    }

    [Fact]
    public void It_is_read_in_a_minute_and_fits_the_smallest_screen()
    {
        Assert.InRange(TourTexts.Cards.Sum(card => card.Text.Split(' ').Length), 60, SlowReadersWordsAMinute);
        foreach (int card in Enumerable.Range(0, TourTexts.Cards.Count))
        {
            ScreenModel model = new(LiveFixture.Ready, new("", "", false), MarkLine.Closed, LiveFixture.Now) { Tour = card };
            string screen = string.Join(' ', ScreenPresenter.Draw(model, 60, 16).ToString().Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains(TourTexts.Cards[card].Text, screen);
        }
    }

    [Fact]
    public void Once_seen_it_is_not_given_again_on_this_machine()
    {
        using TemporaryFolder folder = new();
        SettingsFolder settings = new(folder.Root);
        Assert.False(settings.IsTourSeen);
        Assert.Null(settings.KeepTourSeen());
        Assert.True(new SettingsFolder(folder.Root).IsTourSeen);
    }
}
