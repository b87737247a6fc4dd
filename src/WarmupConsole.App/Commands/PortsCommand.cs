using System.CommandLine;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup ports</c>: what the piano can be played on, and how it sounds.</summary>
internal static class PortsCommand
{
    internal static Command Create(Composition composition)
    {
        Option<bool> test = new("--test") { Description = AppTexts.TestAbout };
        Option<string?> port = Options.Port();
        Command command = new("ports", AppTexts.PortsAbout);
        command.Add(test);
        command.Add(port);
        command.SetAction(parsed => parsed.GetValue(test)
            ? PortTrial.Play(composition, Ports.Choose(composition, parsed.GetValue(port)), parsed.InvocationConfiguration.Output)
            : List(parsed.InvocationConfiguration.Output));
        return command;
    }

    private static int List(TextWriter output)
    {
        PortListing listing = MidiPorts.List();
        foreach (string name in listing.Names)
        {
            output.WriteLine(name);
        }

        if (listing.Trouble is { } trouble)
        {
            output.WriteLine(trouble);
        }

        return ExitCodes.Ok;
    }
}
