using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

public class ScreenGoldenTests
{
    private static readonly Dictionary<string, LiveSession> Sessions = new()
    {
        ["ready"] = LiveFixture.Ready,
        ["start"] = LiveFixture.Tonight,
        ["tonight"] = LiveFixture.Ready,
        ["tour"] = LiveFixture.Ready,
        ["introduce"] = LiveFixture.Introduce,
        ["no-key"] = LiveFixture.NoKey,
        ["introduce-breath"] = LiveFixture.IntroduceBreath,
        ["rung"] = LiveFixture.Rung,
        ["breath"] = LiveFixture.BreathBetween,
        ["wait"] = LiveFixture.Wait,
        ["phase"] = LiveFixture.Phase,
        ["paused"] = LiveFixture.Paused,
        ["silenced"] = LiveFixture.Silenced,
        ["high"] = LiveFixture.High,
        ["finished"] = LiveFixture.Finished,
        ["rehearsal"] = LiveFixture.Rehearsed,
        ["mark"] = LiveFixture.Rung,
        ["pin"] = LiveFixture.Pinned,
        ["pins-at-the-end"] = LiveFixture.Finished with { Marks = LiveFixture.Pinned.Marks },
        ["help"] = LiveFixture.Rung,
    };

    public static TheoryData<string, int, int> Screens()
    {
        TheoryData<string, int, int> rows = [];
        foreach (string state in Sessions.Keys)
        {
            foreach ((int width, int height) in new[] { (80, 24), (120, 36), (200, 60), (60, 16), (40, 12), (30, 8) })
            {
                rows.Add(state, width, height);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void The_screen_is_as_agreed(string state, int width, int height)
    {
        FakeLiveConsole console = new(Sessions[state]) { GivesTour = state == "tour" };
        console.Refused[LiveAction.OneMoreKey] = "The ladder has already turned.";
        console.Status = state switch { "start" => LiveFixture.Known, "rehearsal" => LiveFixture.LookedBack, _ => console.Status };
        using ConsoleWindow window = new(console, Theme.Colours);
        using Headless screen = new(window, width, height);
        if (state == "tonight")
        {
            screen.Press(KeyTableTests.Pressed("Ctrl+G"));
        }

        screen.Type(state switch { "mark" => "altos fl", "pin" => ":te f", "help" => "?", "tonight" => "t2, b3 colds", _ => "" });
        GoldenText.Check($"screens/{state}-{width}x{height}.txt", Trimmed(screen.Screen));
    }

    private static string Trimmed(string screen) =>
        string.Concat(screen.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd() + "\n"));
}
