using System.Diagnostics;
using System.Text;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

/// <summary>
/// This test program started once more, as a process that does nothing but keep a real log on a real disk, until it is killed or the
/// disk refuses. What the log confirms it says in lines on its standard output.
/// </summary>
internal static class LogChild
{
    internal const string Confirmed = "confirmed ";
    internal const string Failed = "failed ";
    internal const string Saved = "saved ";

    private const string FolderVariable = "WARMUP_LOG_CHILD";
    private const string ElsewhereVariable = "WARMUP_LOG_CHILD_ELSEWHERE";
    private const int MostMarks = 100_000;

    /// <summary>Started as such a process, it leads that life and ends; otherwise this does nothing.</summary>
    internal static void LiveIfAsked()
    {
        if (Environment.GetEnvironmentVariable(FolderVariable) is { } folder)
        {
            Live(folder);
            Environment.Exit(0);
        }
    }

    /// <param name="folder">Where the log is to be.</param>
    /// <param name="elsewhere">Where everything is saved when the disk refuses.</param>
    /// <param name="within">A command that starts the process, or none.</param>
    internal static Process Start(string folder, string elsewhere, params IReadOnlyList<string> within)
    {
        string self = Environment.ProcessPath!;
        bool isHosted = Path.GetFileNameWithoutExtension(self) == "dotnet";
        string[] command = [.. within, self, .. isHosted ? new[] { typeof(LogChild).Assembly.Location } : []];
        ProcessStartInfo start = new(command[0], command[1..]) { RedirectStandardOutput = true };
        (start.Environment[FolderVariable], start.Environment[ElsewhereVariable]) = (folder, elsewhere);
        return Process.Start(start)!;
    }

    private static void Live(string folder)
    {
        using SessionLogFile file = SessionLogFile.Create(folder, LogSamples.Evening, Environment.MachineName).File!;
        using SessionLogThread log = new(file.Writer, TimeProvider.System);
        bool refused = false;
        log.MarksFlushed += marks => Say(Confirmed + marks);
        log.Failed += sentence =>
        {
            Say(Failed + sentence);
            refused = true;
        };
        log.Post(LogSamples.Start, LogSamples.Evening, default);
        int id = 0;
        while (id < MostMarks && !refused)
        {
            log.Post(LogSamples.Mark with { Id = ++id }, LogSamples.Evening, new Moment(id));
            log.Post(new RoundStarted(0, id), LogSamples.Evening, new Moment(id));
            log.Drain(); // on this thread: while a module begins, another one cannot call into it
        }

        Say(Saved + (log.SaveElsewhere(Environment.GetEnvironmentVariable(ElsewhereVariable)!) ?? $"{id} marks"));
    }

    /// <summary>One write for a line, so that a kill leaves it whole or not at all.</summary>
    private static void Say(string line)
    {
        using Stream output = Console.OpenStandardOutput();
        output.Write(Encoding.UTF8.GetBytes(line + "\n"));
    }
}
