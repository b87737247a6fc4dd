using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The piano's process, started by the console itself (docs/player-protocol.md).</summary>
internal static class PlayerCommand
{
    internal const string Name = "player";
    internal const string RecordOption = "--record";
    internal const string TraceOption = "--trace";
    internal const string TuningOption = "--a4";

    internal static Command Create()
    {
        Option<string?> record = new(RecordOption);
        Option<string?> trace = new(TraceOption);
        Option<double?> tuning = new(TuningOption);
        Command command = new(Name, AppTexts.PlayerAbout) { Hidden = true };
        command.Add(record);
        command.Add(trace);
        command.Add(tuning);
        command.SetAction(parsed => Composition.RunPlayer(new(parsed.GetValue(record), parsed.GetValue(trace)) { A4Hertz = parsed.GetValue(tuning) }));
        return command;
    }
}
