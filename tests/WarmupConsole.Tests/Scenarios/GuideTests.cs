using System.Text.RegularExpressions;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Support;
using WarmupConsole.Tests.Tui;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Planning;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>The pictures of docs/guide.md are the real screens of the demo. WARMUP_ACCEPT=1 takes them anew.</summary>
public sealed partial class GuideTests
{
    private static readonly Dictionary<string, Func<string>> Pictures = new()
    {
        ["start"] = () => Led(room => room.Show(status => status with { Start = StartLook.Of(room.Composition, room.Content) with { Folder = "2027-02-09.yaml in plans-demo" } })),
        ["tonight"] = () => Led(room => room.Do(ScreenCommand.Tonight).Type("b3, a colds, tired")),
        ["plan"] = () => Planned([.. Enumerable.Repeat("CursorDown", 8)]),
        ["fields"] = () => Planned([.. Enumerable.Repeat("CursorDown", 8), "Enter", "CursorDown", "CursorDown", "CursorDown", "CursorRight"]),
        ["catalogue"] = () => Planned([.. Enumerable.Repeat("CursorDown", 8), "/"]),
        ["leading"] = () => Led(room => room.LeadStep(9).LeadToRung(3)),
        ["mark"] = () => Led(room => room.LeadStep(9).LeadToRung(3).Type("a f")),
        ["end"] = () => Led(Ended),
        ["rehearsal"] = () => Led(room => Ended(room).Do(ScreenCommand.RehearsalMark).Type("Harbour hymn 12-15 a flat at B4").Do(ScreenCommand.KeepMark)),
    };

    [Fact]
    public void Every_picture_is_a_screen_of_the_demo()
    {
        string path = Path.Combine(Repository.Root, "docs", "guide.md");
        string guide = File.ReadAllText(path);
        Assert.Equal(Pictures.Keys, Picture().Matches(guide).Select(match => match.Groups["name"].Value));
        GoldenText.CheckFile(path, Picture().Replace(guide, match => $"{match.Groups["head"].Value}{Pictures[match.Groups["name"].Value]()}\n{match.Groups["foot"].Value}"));
    }

    private static Rehearsal Ended(Rehearsal room) => room.LeadStep(9).LeadToRung(2).Type("a f").Do(ScreenCommand.KeepMark)
        .Type("s strained").Do(ScreenCommand.KeepMark).RestOfStep().Do(LiveAction.End)
        .Show(status => status with { Log = "sessions/2027-02-09T19-30-00.jsonl" });

    private static string Led(Func<Rehearsal, Rehearsal> lead)
    {
        using Rehearsal room = new(width: 80, height: 24);
        return Trimmed(lead(room).Screen);
    }

    private static string Planned(string[] strokes)
    {
        using VirtualDesk machine = new();
        using PlanDesk desk = new(machine.Composition, Content.Load(machine.Composition, Path.Combine(Repository.Root, "plans-demo", "plans", "2027-02-09.yaml"), null).Value!, PortChoice.First);
        using PlanWindow window = new(desk, Theme.Colours);
        using Headless screen = new(window, 80, 24);
        screen.Press([.. strokes.Select(KeyTableTests.Pressed)]);
        return Trimmed(screen.Screen);
    }

    private static string Trimmed(string screen) =>
        string.Join('\n', screen.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd())).Trim('\n');

    [GeneratedRegex(@"(?<head><!-- picture: (?<name>[a-z]+) -->\n```text\n)(?:.|\n)*?(?<foot>```\n<!-- /picture -->)")]
    private static partial Regex Picture();
}
