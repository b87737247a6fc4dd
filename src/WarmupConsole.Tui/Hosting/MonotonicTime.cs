using System.Diagnostics;
using Terminal.Gui.Time;

namespace WarmupConsole.Tui.Hosting;

/// <summary>The library's timers follow the time of day, which may be set back; here they follow a clock that only goes forward.</summary>
internal sealed class MonotonicTime : ITimeProvider
{
    private readonly long _start = Stopwatch.GetTimestamp();
    private readonly SystemTimeProvider _system = new();

    public DateTime Now => DateTime.UnixEpoch + Stopwatch.GetElapsedTime(_start);

    public Task Delay(TimeSpan delay, CancellationToken cancellationToken = default) => _system.Delay(delay, cancellationToken);

    public Terminal.Gui.Time.ITimer CreateTimer(TimeSpan interval, Action callback) => _system.CreateTimer(interval, callback);
}
