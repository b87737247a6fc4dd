using System.CommandLine;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.App.Running;

/// <summary>After the screen has closed: says where the log is, or offers to save it elsewhere.</summary>
internal sealed class LogRescue(Composition composition, InvocationConfiguration surroundings)
{
    private const int MostTries = 5;

    internal void AfterRun(RunLog log)
    {
        if (log.IsUnsaved)
        {
            Rescue(log);
        }
        else if (log is { HasBegun: true, Path: { } path })
        {
            surroundings.Output.WriteLine(AppTexts.SavedTo(path));
        }
    }

    private void Rescue(RunLog log)
    {
        string proposed = Path.Combine(Path.GetTempPath(), SessionLogFile.NameFor(composition.Wall.GetLocalNow()));
        for (int tries = 0; tries < MostTries; tries++)
        {
            surroundings.Output.Write(AppTexts.Unsaved(proposed));
            string answer = composition.Answers?.ReadLine()?.Trim() ?? "";
            if (answer is "n" or "N")
            {
                return;
            }

            string path = answer.Length == 0 ? proposed : answer;
            if (log.Thread.SaveElsewhere(path) is not { } reason)
            {
                surroundings.Output.WriteLine(AppTexts.SavedTo(path));
                return;
            }

            surroundings.Error.WriteLine(AppTexts.NotSaved(path, reason));
        }
    }
}
