using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup keys</c>: every key of a plan, as text or JSON.</summary>
internal static class KeysCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("keys", AppTexts.KeysAbout);
        command.Add(plan);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => Print(
            Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(choir)),
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static int Print(FileRead<Content> read, bool asJson, InvocationConfiguration surroundings)
    {
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        surroundings.Output.WriteLine(asJson ? KeysReport.From(read.Value.Warmup).ToJson() : KeysText.Write(read.Value.Warmup));
        return ExitCodes.Ok;
    }
}
