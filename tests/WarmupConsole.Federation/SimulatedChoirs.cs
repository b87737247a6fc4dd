using System.Globalization;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Federation;

/// <summary>Folders of choirs with logs of the seeded simulator of the recovery tests: six evenings each, one weak pitch each.</summary>
internal static class SimulatedChoirs
{
    private const int Evenings = 6;
    private const double WeakRate = 0.40;

    internal static void Write(string root, int choirs) => Parallel.For(0, choirs, choir =>
    {
        string sessions = Path.Combine(root, string.Create(CultureInfo.InvariantCulture, $"choir-{choir:00000}"), "sessions");
        foreach (IReadOnlyList<SessionRecord> evening in SeasonSimulator.Make(new(choir, Evenings, 1, WeakRate)).Logs)
        {
            using SessionLogFile log = SessionLogFile.Create(sessions, evening[0].At, "simulated").File!;
            foreach (SessionRecord record in evening)
            {
                log.Writer.Add(record.Event, record.At, record.Monotonic);
            }

            if (log.Writer.Write() is { } trouble)
            {
                throw new IOException(trouble);
            }
        }
    });
}
