using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

/// <summary>The table of presses says what the keys really do.</summary>
public class IntentionTests
{
    [Fact]
    public void Twenty_intentions_are_listed_and_most_cost_one_key()
    {
        Assert.Equal(20, IntentionData.Rows.Count);
        Assert.Equal(15, IntentionData.Rows.Count(intention => intention.Presses.Count == 1));
    }

    [Fact]
    public void Each_lets_something_happen_with_its_last_press_and_no_earlier()
    {
        foreach (Intention intention in IntentionData.Rows)
        {
            FakeLiveConsole console = new(LiveFixture.Pinned) { Exercises = [LiveFixture.Scale with { Title = "Siren" }] };
            ScreenControl control = new(console);
            foreach (string press in intention.Presses)
            {
                Assert.Empty(console.Posted);
                Assert.Empty(console.Inserted);
                KeyRow? row = KeyTable.Rows.FirstOrDefault(row => row.Label == press);
                control.Press(KeyTableTests.Pressed(row?.Strokes[0] ?? press));
            }

            Assert.True(console.Posted.Count + console.Inserted.Count == 1, intention.Words);
        }
    }

    [Fact]
    public void A_letter_and_one_key_make_a_whole_mark()
    {
        FakeLiveConsole console = new(LiveFixture.Rung);
        ScreenControl control = new(console);
        foreach (string press in IntentionData.Rows.Single(intention => intention.Presses.Count == 2).Presses)
        {
            control.Press(KeyTableTests.Pressed(press));
        }

        Assert.Equal("altos flat", Assert.IsType<LiveInput.MarkKept>(Assert.Single(console.Posted)).Raw);
    }
}
