using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>The README shows what a director will see. WARMUP_ACCEPT=1 takes the picture anew.</summary>
public sealed class ReadmeTests
{
    private const string Begin = "<!-- screen -->\n```text\n";
    private const string End = "\n```\n<!-- screen -->";

    [Fact]
    public void The_picture_is_a_screen_of_the_demo()
    {
        using Rehearsal room = new(width: 80, height: 24);
        room.LeadStep(9).LeadToRung(4).Type("altos flat").Do(ScreenCommand.KeepMark).Do(LiveAction.StepOn).Do(LiveAction.StepOn).Do(LiveAction.GoOn).LeadToRung(4);
        string screen = string.Join('\n', room.Screen.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd())).Trim('\n');

        string path = Path.Combine(Repository.Root, "README.md");
        string readme = File.ReadAllText(path);
        int from = readme.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = readme.IndexOf(End, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
        {
            File.WriteAllText(path, readme[..from] + screen + readme[to..]);
            return;
        }

        Assert.Equal(screen, readme[from..to]);
    }
}
