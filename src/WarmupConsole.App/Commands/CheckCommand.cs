using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup check</c>: what a director should know about a plan before the room fills.</summary>
internal static class CheckCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("check", AppTexts.CheckAbout);
        command.Add(plan);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => Check(
            Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(choir)),
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static int Check(FileRead<Content> read, bool asJson, InvocationConfiguration surroundings)
    {
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        EarlierPlans earlier = EarlierPlans.Before(read.Value.Folder, read.Value.Plan);
        foreach (FileProblem problem in earlier.Problems)
        {
            surroundings.Error.WriteLine(AppTexts.EarlierUnread(problem.Headline));
        }

        CheckedPlan plan = new(read.Value, earlier.Plans);
        surroundings.Output.Write(asJson ? CheckReport.From(plan).ToJson() + "\n" : CheckText.Write(plan));
        return plan.Errors > 0 ? ExitCodes.Findings : ExitCodes.Ok;
    }
}
