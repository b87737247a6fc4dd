using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Planning;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui.Planning;

public class PlanScreenTests
{
    private static readonly Dictionary<string, string[]> Ways = new()
    {
        ["steps"] = ["CursorDown", "CursorDown", "CursorDown"],
        ["fields"] = [.. Enumerable.Repeat("CursorDown", 8), "Enter", "CursorDown", "CursorDown", "CursorDown", "CursorRight", "CursorRight"],
        ["put-in"] = [.. Enumerable.Repeat("CursorDown", 5), "s", "i", "r"],
        ["replace"] = [.. Enumerable.Repeat("CursorDown", 8), "/", "CursorDown"],
        ["help"] = ["?"],
    };

    public static TheoryData<string, int, int> Screens()
    {
        TheoryData<string, int, int> rows = [];
        foreach (string way in Ways.Keys)
        {
            foreach ((int width, int height) in new[] { (80, 24), (120, 36), (60, 16), (40, 12) })
            {
                rows.Add(way, width, height);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void The_screen_is_as_agreed(string way, int width, int height)
    {
        using PlanWindow window = new(PlanFixture.Desk(), Theme.Colours);
        using Headless screen = new(window, width, height);
        Press(screen, Ways[way]);
        GoldenText.Check($"planning/{way}-{width}x{height}.txt", string.Concat(screen.Screen.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd() + "\n")));
    }

    [Fact]
    public void Steps_are_moved_taken_out_brought_back_and_written()
    {
        FakePlanDesk desk = PlanFixture.Desk();
        PlanControl control = new(desk);
        Press(control, ">", "Ctrl+W");
        Assert.Equal([1, 0, 2], desk.Saved.Single().Origins.Take(3));

        Press(control, "Backspace");
        Assert.Equal(11, control.Model().Draft.Warmup.Steps.Count);
        Assert.True(control.Model().IsChanged);
        Press(control, "Ctrl+U");
        Assert.False(control.Model().IsChanged);
        Press(control, "Ctrl+U", "Ctrl+U");
        Assert.Equal(PlanTexts.NothingToUndo, control.Model().Word);
        Assert.Equal(desk.Start.Origins, control.Model().Draft.Origins);
    }

    [Fact]
    public void A_letter_opens_the_catalogue_and_what_is_taken_stands_behind_the_step()
    {
        FakePlanDesk desk = PlanFixture.Desk();
        PlanControl control = new(desk);
        Press(control, "s", "i", "r", "e", "n");
        Assert.Equal(PlanMode.PutIn, control.Model().Mode);
        string offered = control.Model().Offered!.Exercise.Id;
        Press(control, "Space", "Enter");

        Assert.Equal([offered], desk.Played);
        Assert.Equal((13, offered, 1), (control.Model().Draft.Warmup.Steps.Count, control.Model().Draft.Step!.Exercise.Id, control.Model().Draft.Selected));
    }

    [Fact]
    public void In_the_place_of_a_step_what_trains_the_same_is_offered_first()
    {
        PlanControl control = new(PlanFixture.Desk());
        Press(control, [.. Enumerable.Repeat("CursorDown", 8), "/"]);
        PlanModel model = control.Model();

        Assert.NotEmpty(Alternatives.Shared(model.Draft.Step!.Exercise, model.Found[0]));
        Assert.DoesNotContain(model.Draft.Step.Exercise, model.Found);
        Press(control, "Enter");
        Assert.Equal((12, model.Found[0].Id), (control.Model().Draft.Warmup.Steps.Count, control.Model().Draft.Step!.Exercise.Id));
    }

    [Fact]
    public void Comments_that_would_be_lost_are_told_before_anything_is_written()
    {
        FakePlanDesk desk = PlanFixture.Desk();
        desk.Lost = ["# for the altos"];
        PlanControl control = new(desk);
        Press(control, ">", "Ctrl+W");
        Assert.Empty(desk.Saved);
        Assert.Contains("# for the altos", control.Model().Word);
        Press(control, "CursorDown", "Ctrl+W");
        Assert.Empty(desk.Saved);
        Press(control, "Ctrl+W");
        Assert.Single(desk.Saved);
    }

    [Fact]
    public void A_plan_without_steps_is_not_written()
    {
        FakePlanDesk desk = PlanFixture.Desk();
        PlanControl control = new(desk);
        Press(control, [.. Enumerable.Repeat("Backspace", 12), "Ctrl+W"]);
        Assert.Empty(desk.Saved);
        Assert.Equal(PlanTexts.NeedsAStep, control.Model().Word);
        Press(control, "s", "i", "r", "Enter", "Ctrl+W");
        Assert.Single(desk.Saved);
    }

    [Fact]
    public void Leaving_with_changes_asks_once()
    {
        PlanControl control = new(PlanFixture.Desk());
        Press(control, ">", "Ctrl+Q");
        Assert.False(control.Leaves);
        Assert.Equal(PlanTexts.LeaveAgain, control.Model().Word);
        Press(control, "Ctrl+Q");
        Assert.True(control.Leaves);
        PlanControl unchanged = new(PlanFixture.Desk());
        Press(unchanged, "Ctrl+Q");
        Assert.True(unchanged.Leaves);
    }

    [Fact]
    public void Silence_works_in_every_mode()
    {
        foreach (PlanMode mode in Enum.GetValues<PlanMode>())
        {
            FakePlanDesk desk = PlanFixture.Desk();
            PlanControl control = new(desk);
            Press(control, mode switch { PlanMode.Fields => ["Enter"], PlanMode.PutIn => ["+"], PlanMode.Replace => ["/"], _ => [] });
            Assert.Equal(mode, control.Model().Mode);
            Press(control, "Tab");
            Assert.Equal(1, desk.Silences);
        }
    }

    [Fact]
    public void No_key_means_two_things_and_each_is_one_that_the_library_delivers()
    {
        foreach (PlanMode mode in Enum.GetValues<PlanMode>())
        {
            string[] strokes = [.. PlanKeys.Rows.Where(row => row.Modes.Contains(mode)).SelectMany(row => row.Strokes)];
            Assert.Equal(strokes.Distinct(), strokes);
            Assert.All(strokes, stroke => Assert.Equal(stroke, KeyStroke.Name(KeyTableTests.Pressed(stroke))));
        }

        Assert.Equal(Enum.GetValues<PlanCommand>().Order(), PlanKeys.Rows.Select(row => row.Command).Order());
    }

    [Fact]
    public void Whatever_is_pressed_nothing_breaks()
    {
        string[] strokes = [.. PlanKeys.Rows.SelectMany(row => row.Strokes).Where(stroke => stroke != "Ctrl+Q"), "a", "z", "4", "é"];
        Random random = new(5);
        PlanControl control = new(PlanFixture.Desk());
        for (int press = 0; press < 1500; press++)
        {
            Press(control, strokes[random.Next(strokes.Length)]);
            if (press % 50 == 0)
            {
                PlanPage.Draw(control.Model(), 80, 24);
            }
        }
    }

    private static void Press(PlanControl control, params string[] strokes)
    {
        foreach (string stroke in strokes)
        {
            control.Press(KeyTableTests.Pressed(stroke));
        }
    }

    private static void Press(Headless screen, params string[] strokes)
    {
        foreach (string stroke in strokes)
        {
            screen.Press(KeyTableTests.Pressed(stroke));
        }
    }
}
