using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup ranges</c>: what the parts can sing; and the way to find it out.</summary>
internal static class RangesCommand
{
    internal static Command Create(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("ranges", AppTexts.RangesAbout);
        command.Add(choir);
        command.Add(json);
        command.Add(Check(composition));
        command.Add(Accept(composition));
        command.SetAction(parsed => With(composition, parsed.GetValue(choir), parsed.InvocationConfiguration, folder =>
        {
            parsed.InvocationConfiguration.Output.Write(parsed.GetValue(json)
                ? RangesReport.From(folder.Choir, composition.Today).ToJson() + "\n"
                : RangesText.Write(folder.Choir, composition.Today));
            return ExitCodes.Ok;
        }));
        return command;
    }

    private static Command Check(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<string?> part = new("--part") { Description = AppTexts.PartAbout, HelpName = "PART" };
        Option<string?> port = Options.Port();
        Command check = new("check", AppTexts.RangesCheckAbout);
        check.Add(choir);
        check.Add(part);
        check.Add(port);
        check.SetAction(parsed => With(composition, parsed.GetValue(choir), parsed.InvocationConfiguration, folder =>
            new RangeCheck(composition, parsed.InvocationConfiguration).Run(folder, parsed.GetValue(part), Ports.Choose(composition, parsed.GetValue(port)))));
        return check;
    }

    private static Command Accept(Composition composition)
    {
        Argument<string> part = Options.Required("part", AppTexts.AcceptPartAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command accept = new("accept", AppTexts.AcceptAbout);
        accept.Add(part);
        accept.Add(choir);
        accept.Add(json);
        accept.SetAction(parsed => With(composition, parsed.GetValue(choir), parsed.InvocationConfiguration, folder =>
            RangeAcceptance.Run(composition, folder, (parsed.GetValue(part)!, parsed.GetValue(json)), parsed.InvocationConfiguration)));
        return accept;
    }

    private static int With(Composition composition, string? choir, InvocationConfiguration surroundings, Func<ChoirFolder, int> act)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, choir);
        return folder.IsGood ? act(folder.Value) : Problems.Print(folder.Problems, surroundings.Error);
    }
}
