using System.CommandLine;
using WarmupConsole.Tui.Hosting;

namespace WarmupConsole.App.Running;

/// <summary>Editing a plan on the screen, from its file to its file.</summary>
internal static class PlanEditing
{
    /// <summary>The exit code, and the file that holds the plan afterwards.</summary>
    internal static (int Code, string Path) Run(Composition composition, InvocationConfiguration surroundings, Content content, string? port)
    {
        if (content.Plan.Plan.Bare is not null || content.Plan.Yaml.Length == 0)
        {
            surroundings.Error.WriteLine(AppTexts.NothingToEdit);
            return (ExitCodes.BadInput, content.Plan.Path);
        }

        if (!TerminalHost.HasTerminal)
        {
            surroundings.Error.WriteLine(AppTexts.NoTerminal);
            return (ExitCodes.BadInput, content.Plan.Path);
        }

        using PlanDesk desk = new(composition, content, Ports.Choose(composition, port));
        int code = TerminalHost.Run(desk, desk.Dispose);
        return (code, desk.WasSaved ? desk.Path : content.Plan.Path);
    }
}
