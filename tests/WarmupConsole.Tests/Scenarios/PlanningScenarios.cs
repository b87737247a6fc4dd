using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Tests.App;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tests.Tui;
using WarmupConsole.Tui.Planning;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>A plan edited on the real screen, from its file to its file.</summary>
public sealed class PlanningScenarios : IDisposable
{
    private readonly ToolRun _tool = new();
    private readonly VirtualDesk _room = new();

    public void Dispose()
    {
        _room.Dispose();
        _tool.Dispose();
    }

    [Fact]
    public void A_plan_is_edited_and_written_with_its_comments()
    {
        string path = Commented();
        using PlanDesk desk = Open(path);
        using PlanWindow window = new(desk, Theme.Colours);
        using Headless screen = new(window, 80, 24);
        Press(screen, ">", "Ctrl+W");

        Assert.Contains("Written: ", screen.Screen);
        string text = File.ReadAllText(path);
        Assert.Contains("# ours", text);
        Assert.True(text.IndexOf("second", StringComparison.Ordinal) < text.IndexOf("first", StringComparison.Ordinal), text);
        Assert.Equal(0, _tool.Call("check", path));
    }

    [Fact]
    public void A_file_that_was_changed_meanwhile_is_left_alone_and_the_plan_written_beside_it()
    {
        string path = Commented();
        using PlanDesk desk = Open(path);
        File.AppendAllText(path, "# another hand\n");
        (bool isSaved, string sentence) = desk.Save(desk.Start.Move(1));

        Assert.True(isSaved);
        Assert.Contains("changed by another program", sentence);
        Assert.EndsWith("# another hand\n", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.True(File.Exists(path.Replace(".yaml", "-2.yaml", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_step_is_heard_and_silenced()
    {
        using PlanDesk desk = Open(Commented());
        using PlanWindow window = new(desk, Theme.Colours);
        using Headless screen = new(window, 80, 24);
        Press(screen, "CursorDown", "CursorDown", "CursorDown", "Space");
        _room.Advance(TimeSpan.FromSeconds(1));
        Assert.NotEmpty(_room.Given);

        Press(screen, "Tab");
        _room.Advance(TimeSpan.FromSeconds(5));
        Assert.Empty(_room.Sounding);
    }

    private string Commented()
    {
        string path = _tool.PathOf(Path.Combine("plans", "2027-02-09.yaml"));
        string[] lines = File.ReadAllText(path).Split('\n');
        int[] steps = [.. lines.Index().Where(line => line.Item.TrimStart().StartsWith("- exercise", StringComparison.Ordinal) || line.Item.TrimStart().StartsWith("- {exercise", StringComparison.Ordinal)).Select(line => line.Index)];
        lines[steps[1]] = "  # second\n" + lines[steps[1]];
        lines[steps[0]] = "  # first\n" + lines[steps[0]];
        return _tool.Put(Path.Combine("plans", "2027-02-09.yaml"), "# ours\n" + string.Join('\n', lines));
    }

    private PlanDesk Open(string path) => new(_room.Composition, Content.Load(_room.Composition, path, null).Value!, PortChoice.First);

    private static void Press(Headless screen, params string[] strokes)
    {
        foreach (string stroke in strokes)
        {
            screen.Press(KeyTableTests.Pressed(stroke));
        }
    }
}
