using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup new</c>: the folder of a choir, with ranges to start from and a first plan.</summary>
internal static class NewCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string> folder = Options.Required("folder", AppTexts.NewFolderAbout);
        Option<string> voices = new("--voices") { Description = AppTexts.VoicesAbout, HelpName = string.Join('|', NewChoir.Voicings), Required = true };
        voices.AcceptOnlyFromAmong([.. NewChoir.Voicings]);
        Option<bool> json = Options.Json();
        Command command = new("new", AppTexts.NewAbout);
        command.Add(folder);
        command.Add(voices);
        command.Add(json);
        command.SetAction(parsed => Write(
            Path.GetFullPath(parsed.GetRequiredValue(folder), composition.CurrentFolder),
            parsed.GetRequiredValue(voices),
            composition.Today,
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static int Write(string root, string voices, DateOnly day, bool asJson, InvocationConfiguration surroundings)
    {
        if (NewChoir.Write(root, voices, day) is { } problem)
        {
            return Problems.Print([problem], surroundings.Error);
        }

        surroundings.Output.WriteLine(asJson ? new WrittenReport(NewChoir.Paths(root, day)).ToJson() : AppTexts.NewWritten(root, NewChoir.PlanPath(root, day)));
        return ExitCodes.Ok;
    }
}
