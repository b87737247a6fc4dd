using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup check</c>: what a director should know about a plan before the room fills.</summary>
internal static class CheckCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Command command = new("check", AppTexts.CheckAbout);
        command.Add(plan);
        command.Add(choir);
        command.SetAction(parsed => Check(
            Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(choir)),
            parsed.InvocationConfiguration));
        return command;
    }

    private static int Check(FileRead<Content> read, InvocationConfiguration surroundings)
    {
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        IReadOnlyList<PlanRemark> remarks = PlanCheck.Check(read.Value.Warmup);
        surroundings.Output.Write(CheckText.Write(read.Value.Warmup, remarks));
        return remarks.Any(remark => remark.Severity == PlanSeverity.Error) ? ExitCodes.Findings : ExitCodes.Ok;
    }
}
