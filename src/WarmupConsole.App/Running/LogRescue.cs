using System.CommandLine;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.App.Running;

/// <summary>After the screen has closed: says where the log is, or offers to save it elsewhere.</summary>
internal sealed class LogRescue(Composition composition, InvocationConfiguration surroundings)
{
    /// <summary>False when the log is on no disk and nobody is there to say where to put it.</summary>
    internal bool AfterRun(RunLog log)
    {
        if (log.IsUnsaved)
        {
            return Rescue(log);
        }

        if (log is { HasBegun: true, Path: { } path })
        {
            surroundings.Output.WriteLine(AppTexts.SavedTo(path));
        }

        return true;
    }

    private bool Rescue(RunLog log)
    {
        string proposed = Path.Combine(Path.GetTempPath(), SessionLogFile.NameFor(composition.Wall.GetLocalNow()));
        while (true)
        {
            surroundings.Output.Write(AppTexts.Unsaved(proposed));
            string? answer = composition.Answers?.ReadLine()?.Trim();
            if (answer is "n" or "N")
            {
                return true;
            }

            string path = string.IsNullOrEmpty(answer) ? proposed : answer;
            if (log.Thread.SaveElsewhere(path) is not { } reason)
            {
                surroundings.Output.WriteLine(AppTexts.SavedTo(path));
                return true;
            }

            surroundings.Error.WriteLine(AppTexts.NotSaved(path, reason));
            if (answer is null)
            {
                return false;
            }
        }
    }
}
