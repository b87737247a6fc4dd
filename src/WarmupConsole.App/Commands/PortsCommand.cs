using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup ports</c>: what the piano can be played on, what would be listened to, what would be used and why, and how it sounds.</summary>
internal static class PortsCommand
{
    internal static Command Create(Composition composition)
    {
        Option<bool> test = new("--test") { Description = AppTexts.TestAbout };
        Option<string?> use = new("--use") { Description = AppTexts.UseAbout, HelpName = "NAME" };
        Option<string?> port = Options.Port();
        Option<bool> json = Options.Json();
        Command command = new("ports", AppTexts.PortsAbout);
        foreach (Option option in (Option[])[test, use, port, json])
        {
            command.Add(option);
        }

        command.SetAction(parsed =>
        {
            TextWriter output = parsed.InvocationConfiguration.Output;
            if (parsed.GetValue(use) is { } name && Ports.Remember(composition, name) is { } trouble)
            {
                parsed.InvocationConfiguration.Error.WriteLine(trouble);
                return ExitCodes.BadInput;
            }

            return parsed.GetValue(test)
                ? PortTrial.Play(composition, Ports.Choose(composition, parsed.GetValue(port)), output)
                : List(composition, parsed.GetValue(port), parsed.GetValue(json), parsed.InvocationConfiguration);
        });
        command.Validators.Add(result =>
        {
            if (result.GetValue(test) && result.GetValue(json))
            {
                result.AddError(AppTexts.TestIsHeard);
            }
        });
        return command;
    }

    private static int List(Composition composition, string? asked, bool asJson, InvocationConfiguration surroundings)
    {
        string why = asked is null ? AppTexts.PortFromSettings(composition.Settings.SettingsPath) : AppTexts.PortFromOption;
        SoundOutlook builtIn = composition.BuiltIn();
        (PortListing listing, PortChoice choice) = (MidiPorts.List(), Ports.Choose(composition, asked));
        InputOutlook inputs = Ports.Inputs(composition, asked, MidiInputs.List());
        IReadOnlyList<string> lines = asJson
            ? [PortsReport.From((listing, choice, why), builtIn, inputs).ToJson()]
            : [.. PortOutlook.Lines(listing, choice, why, builtIn), "", .. inputs.Lines, "", AppTexts.SettingsAt(composition.Settings.SettingsPath)];
        foreach (string line in lines)
        {
            surroundings.Output.WriteLine(line);
        }

        return Ports.Faults(composition) is [_, ..] faults ? Problems.Print(faults, surroundings.Error) : ExitCodes.Ok;
    }
}
