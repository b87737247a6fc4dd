using System.CommandLine;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.App.Commands;

/// <summary>The process that listens to the piano, started by the console itself (docs/player-protocol.md).</summary>
internal static class EarCommand
{
    internal const string Name = "ear";
    internal const string InputOption = "--input";

    internal static Command Create()
    {
        Option<string?> input = new(InputOption);
        Command command = new(Name, AppTexts.EarAbout) { Hidden = true };
        command.Add(input);
        command.SetAction(parsed => Composition.RunEar(parsed.GetValue(input) is { } name ? PortChoice.Named(name) : PortChoice.First));
        return command;
    }
}
