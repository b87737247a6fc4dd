using System.CommandLine;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup ports</c>: what the piano can be played on, what would be used and why, and how it sounds.</summary>
internal static class PortsCommand
{
    internal static Command Create(Composition composition)
    {
        Option<bool> test = new("--test") { Description = AppTexts.TestAbout };
        Option<string?> use = new("--use") { Description = AppTexts.UseAbout, HelpName = "NAME" };
        Option<string?> port = Options.Port();
        Command command = new("ports", AppTexts.PortsAbout);
        foreach (Option option in (Option[])[test, use, port])
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
                : List(composition, parsed.GetValue(port), parsed.InvocationConfiguration);
        });
        return command;
    }

    private static int List(Composition composition, string? asked, InvocationConfiguration surroundings)
    {
        string why = asked is null ? AppTexts.PortFromSettings(composition.Settings.SettingsPath) : AppTexts.PortFromOption;
        foreach (string line in PortOutlook.Lines(MidiPorts.List(), Ports.Choose(composition, asked), why, composition.BuiltIn()))
        {
            surroundings.Output.WriteLine(line);
        }

        return Ports.Faults(composition) is [_, ..] faults ? Problems.Print(faults, surroundings.Error) : ExitCodes.Ok;
    }
}
