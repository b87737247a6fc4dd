using WarmupConsole.Sessions.Live;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Sessions.Live;

public class StateDiagramTests
{
    private const string Page = "docs/session-states.md";

    [Fact]
    public void The_page_of_states_shows_the_machine_as_it_is()
    {
        string wanted = $"""
            # The states of a running warm-up

            Drawn by the live machine itself; a test compares this page with it. To accept a change, run the tests with `WARMUP_ACCEPT=1`.
            Words in brackets are conditions. Pause and silence are a hold beside the state, not states of their own.

            ```mermaid
            {LiveMachine.Graph().ReplaceLineEndings("\n").Trim()}
            ```

            ## What each action does in each state

            "x" acts (also where the state stays the same, as with a tempo change); a letter is a refusal:
            {string.Join("; ", LiveGridTests.Reasons.Select(reason => $"{reason.Key}: {reason.Value.TrimEnd('.')}"))}.
            The ends of plan, ladder and metronome refuse with sentences of their own.

            | state | hold | {LiveGridTests.Columns.Replace(" ", " | ", StringComparison.Ordinal)} |
            |---|---|{string.Concat(LiveGridTests.Columns.Split(' ').Select(_ => "---|"))}
            {string.Join('\n', LiveGridTests.Grid.Select(row => Row(row.Data)))}

            """.ReplaceLineEndings("\n");
        string path = Path.Combine(Repository.Root, Page);
        if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
        {
            File.WriteAllText(path, wanted);
        }

        Assert.True(File.Exists(path), $"{Page} is missing; it should say:\n{wanted}");
        Assert.Equal(wanted, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Row((LiveState State, Hold Hold, string Cells) row) =>
        $"| {row.State} | {row.Hold} | {row.Cells.Replace(" ", " | ", StringComparison.Ordinal)} |";
}
