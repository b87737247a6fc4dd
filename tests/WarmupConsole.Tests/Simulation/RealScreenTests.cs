using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Tests.Scenarios;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Simulation;

/// <summary>Random keys through the real screen, files and log: the same laws, fewer evenings.</summary>
public class RealScreenTests
{
    private const int Evenings = 30;
    private const int Keys = 30;

    private static readonly string[] Typed = ["a", "altos flat", "b f", "?x", "é♭", "in E"];

    [Fact]
    public void Random_keys_through_the_real_screen_break_no_law()
    {
        int acted = Enumerable.Range(0, Evenings).Sum(Evening);
        Assert.True(acted > Evenings, $"Only {acted} facts were logged.");
    }

    private static int Evening(int seed)
    {
        try
        {
            return Lead(new(seed));
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"evening {seed}: {e.Message}", e);
        }
    }

    private static int Lead(Random random)
    {
        using Rehearsal room = new(hasPort: random.Next(5) > 0);
        SessionEvent[] logged = [];
        for (int key = 0; key < Keys; key++)
        {
            Press(room, random);
            room.Pass(TimeSpan.FromMilliseconds(random.Next(3) * random.Next(4000)));
            logged = [.. room.LogPath is { } path && new FileInfo(path).Length > 0 ? room.Logged.Select(record => record.Event) : []];
            Law.Holds(LogMirror.AreSame(SessionFacts.Fold(logged), room.Session.Facts()), "The log does not fold to what is shown", room.Session.State);
            Law.Holds(room.Session.Hold == Hold.None || room.Sounding.Count == 0, "It sounds in a hold", room.Session.Hold);
            Law.Holds(room.Screen.Trim().Length > 0, "The screen is empty");
        }

        return logged.Length;
    }

    private static void Press(Rehearsal room, Random random)
    {
        if (random.Next(4) == 0)
        {
            room.Type(Typed[random.Next(Typed.Length)]);
            return;
        }

        KeyRow row = KeyTable.Rows[random.Next(KeyTable.Rows.Count)];
        if (row.Action is { } action)
        {
            room.Do(random.Next(2) == 0 ? LiveAction.GoOn : action);
        }
        else if (row.Command is { } command and not ScreenCommand.Leave)
        {
            room.Do(command);
        }
    }
}
