using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The piano's process, started by the console itself (docs/player-protocol.md).</summary>
internal static class PlayerCommand
{
    internal const string Name = "player";
    internal const string RecordOption = "--record";

    internal static Command Create()
    {
        Option<string?> record = new(RecordOption);
        Command command = new(Name, AppTexts.PlayerAbout) { Hidden = true };
        command.Add(record);
        command.SetAction(parsed => Composition.RunPlayer(parsed.GetValue(record)));
        return command;
    }
}
