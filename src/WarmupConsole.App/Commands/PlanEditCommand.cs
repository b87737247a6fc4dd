using System.CommandLine;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup plan edit</c>: a plan on the screen.</summary>
internal static class PlanEditCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<string?> port = Options.Port();
        Command command = new("edit", AppTexts.PlanEditAbout) { plan, choir, port };
        command.SetAction(parsed =>
        {
            FileRead<Content> read = Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(choir));
            return read.IsGood
                ? PlanEditing.Run(composition, parsed.InvocationConfiguration, read.Value, parsed.GetValue(port)).Code
                : Problems.Print(read.Problems, parsed.InvocationConfiguration.Error);
        });
        return command;
    }
}
