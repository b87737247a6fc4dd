using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Sessions.Findings;
using WarmupConsole.Tests.Sessions.Findings.Seasons;
using WarmupConsole.Tests.Storage;

namespace WarmupConsole.Tests.App;

/// <summary>A choir's folder with the logs of a simulated season in it, as files.</summary>
internal static class SeasonFolder
{
    /// <returns>The paths of the logs, oldest first.</returns>
    internal static IReadOnlyList<string> Write(TemporaryFolder folder, Season season)
    {
        folder.Write(SeasonChoir.Yaml, "choir.yaml");
        return [.. season.Logs.Select(log => Write(folder.PathOf("sessions"), log))];
    }

    internal static string Write(string folder, IReadOnlyList<SessionRecord> log)
    {
        using SessionLogFile file = SessionLogFile.Create(folder, log[0].At, "here").File!;
        foreach (SessionRecord record in log)
        {
            file.Writer.Add(record.Event, record.At, new Moment(record.Monotonic.Nanoseconds));
        }

        Assert.Null(file.Writer.Write());
        return file.Path;
    }
}
