using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The piano's process, started by the console itself (docs/player-protocol.md).</summary>
internal static class PlayerCommand
{
    internal const string Name = "player";
    internal const string RecordOption = "--record";
    internal const string TraceOption = "--trace";

    internal static Command Create()
    {
        Option<string?> record = new(RecordOption);
        Option<string?> trace = new(TraceOption);
        Command command = new(Name, AppTexts.PlayerAbout) { Hidden = true };
        command.Add(record);
        command.Add(trace);
        command.SetAction(parsed => Composition.RunPlayer(new(parsed.GetValue(record), parsed.GetValue(trace))));
        return command;
    }
}
