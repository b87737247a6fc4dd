using WarmupConsole.Midi.Player;

namespace WarmupConsole.Tests.Support;

/// <summary>Collects a player's reports, which come on other threads, and lets the test wait for them.</summary>
internal sealed class ReportList
{
    private readonly object _lock = new();
    private readonly List<PlayerReport> _reports = [];

    internal IReadOnlyList<PlayerReport> All => WaitFor(0);

    internal void Add(PlayerReport report)
    {
        lock (_lock)
        {
            _reports.Add(report);
            Monitor.PulseAll(_lock);
        }
    }

    internal IReadOnlyList<PlayerReport> WaitFor(int count)
    {
        lock (_lock)
        {
            while (_reports.Count < count)
            {
                Assert.True(Monitor.Wait(_lock, TimeSpan.FromSeconds(30)), $"Only {_reports.Count} of {count} reports came.");
            }

            return [.. _reports];
        }
    }
}
