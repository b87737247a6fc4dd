using Terminal.Gui.Drivers;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Planning;
using WarmupConsole.Tui.Presentation;
using WarmupConsole.Tui.Presentation.Reviewing;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Hosting;

/// <summary>Runs a window on the terminal and gives the terminal back, whatever happens.</summary>
public static class TerminalHost
{
    /// <summary>Exit code when there is no terminal.</summary>
    public const int NoTerminal = 2;

    /// <summary>False when input or output is redirected and no terminal can be opened: the screen library would wait for ever then.</summary>
    public static bool HasTerminal => Driver.IsAttachedToTerminal(out _, out _);

    /// <param name="console">What the window shows and drives.</param>
    /// <param name="save">Silences and saves; may be called twice and from any thread.</param>
    /// <returns>0; 2 without a terminal; 70 after an error of the program; 128 and the signal's number after a signal.</returns>
    public static int Run(ILiveConsole console, Action save)
    {
        if (!HasTerminal)
        {
            Console.Error.WriteLine(ScreenTexts.NoTerminal);
            return NoTerminal;
        }

        using LoopRate rate = new(console);
        using GuardedRun run = new(() => new ConsoleWindow(console), () => console.Post(new LiveInput.Act(LiveAction.Silence)), save);
        return run.Run();
    }

    /// <summary>The same for the planning of a plan.</summary>
    public static int Run(IPlanDesk desk, Action save)
    {
        if (!HasTerminal)
        {
            Console.Error.WriteLine(ScreenTexts.NoTerminal);
            return NoTerminal;
        }

        using GuardedRun run = new(() => new PlanWindow(desk), desk.Silence, save);
        return run.Run();
    }

    /// <summary>The same for a review, until the director leaves it.</summary>
    public static int Show(ReviewModel review)
    {
        if (!HasTerminal)
        {
            Console.Error.WriteLine(ScreenTexts.NoTerminal);
            return NoTerminal;
        }

        using GuardedRun run = new(() => new ReviewWindow(review), () => { }, () => { });
        return run.Run();
    }
}
