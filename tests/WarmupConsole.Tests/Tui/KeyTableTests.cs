using Terminal.Gui.Input;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class KeyTableTests
{
    public static TheoryData<string, bool> Strokes()
    {
        TheoryData<string, bool> rows = [];
        foreach (KeyRow row in KeyTable.Rows)
        {
            foreach (string stroke in row.Strokes)
            {
                rows.Add(stroke, row.Use == LineUse.WhenOpen);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Strokes))]
    public void Each_key_of_the_table_is_one_that_the_library_delivers(string stroke, bool lineOpen)
    {
        Key key = Pressed(stroke);

        Assert.Equal(stroke, KeyStroke.Name(key));
        Assert.NotNull(KeyTable.Find(stroke, lineOpen));
    }

    [Theory]
    [MemberData(nameof(Strokes))]
    public void Each_live_key_posts_its_action(string stroke, bool lineOpen)
    {
        FakeLiveConsole console = new(LiveFixture.Rung);
        ScreenControl control = new(console);
        if (lineOpen)
        {
            control.Press(new Key('a'));
        }

        control.Press(Pressed(stroke));

        KeyRow row = KeyTable.Find(stroke, lineOpen)!;
        Assert.Equal(row.Command == ScreenCommand.LearnPedal || (row.Action is { } asked && PromptLine.For(asked) is not null), control.Prompt is not null);
        LiveInput? expected = row.Action is { } action ? PromptLine.For(action) is not null ? null : new LiveInput.Act(action) : Posted(row.Command!.Value);
        if (expected is null)
        {
            Assert.Empty(console.Posted);
        }
        else
        {
            Assert.Equal(expected, Assert.Single(console.Posted) with { });
        }
    }

    [Fact]
    public void Every_live_action_and_every_command_has_a_key()
    {
        Assert.Equal(Enum.GetValues<LiveAction>().Order(), KeyTable.Rows.Select(row => row.Action).OfType<LiveAction>().Distinct().Order());
        Assert.Equal(Enum.GetValues<ScreenCommand>().Order(), KeyTable.Rows.Select(row => row.Command).OfType<ScreenCommand>().Distinct().Order());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_key_means_two_things(bool lineOpen)
    {
        string[] strokes = [.. KeyTable.Rows.Where(row => row.WorksWith(lineOpen)).SelectMany(row => row.Strokes)];
        Assert.Equal(strokes.Distinct(), strokes);
    }

    [Fact]
    public void Letters_digits_escape_function_and_page_keys_drive_nothing()
    {
        string[] strokes = [.. KeyTable.Rows.SelectMany(row => row.Strokes)];
        Assert.DoesNotContain(strokes, stroke => stroke.Length == 1 && char.IsLetterOrDigit(stroke[0]));
        Assert.DoesNotContain(strokes, stroke => stroke.StartsWith('F') || stroke.StartsWith("Page", StringComparison.Ordinal) || stroke == "Esc" || stroke == "Ctrl+Z");
    }

    [Fact]
    public void While_a_mark_is_written_no_printing_key_drives() =>
        Assert.All(KeyTable.Rows.Where(row => row.WorksWith(lineOpen: true)), row => Assert.All(row.Strokes, stroke => Assert.Null(KeyStroke.Printed(Pressed(stroke)))));

    [Fact]
    public void Keys_md_is_what_the_table_says() => GoldenText.CheckFile(GoldenText.Docs("keys.md"), KeysPage.Markdown());

    [Theory]
    [InlineData(LiveAction.Silence)]
    [InlineData(LiveAction.GoOn)]
    public void Silence_and_going_on_work_at_all_times(LiveAction action) =>
        Assert.Contains(KeyTable.Rows, row => row.Action == action && row.Use == LineUse.Always);

    internal static Key Pressed(string stroke) => stroke switch
    {
        "Space" => Key.Space,
        { Length: 1 } => new Key(stroke[0]),
        _ => Key.TryParse(stroke, out Key? key) ? key : throw new ArgumentException(stroke),
    };

    private static LiveInput? Posted(ScreenCommand command) => command switch
    {
        ScreenCommand.KeepMark => new LiveInput.MarkKept("a", LiveFixture.Rung.AnchorAt(LiveFixture.Now)),
        ScreenCommand.TakeSuggestion => new LiveInput.MarkKept("altos flat", LiveFixture.Rung.AnchorAt(LiveFixture.Now)),
        ScreenCommand.Pin => new LiveInput.PinMoment(),
        ScreenCommand.UndoMark => new LiveInput.UndoMark(),
        ScreenCommand.MoveMarkBack => new LiveInput.MoveMarkBack(),
        _ => null,
    };
}
