namespace WarmupConsole.Midi.Ports;

/// <summary>
/// Looks at the names of the ports every 0.4 seconds, in a thread and through handles of its own: a lost device is noticed in no
/// other way by most drivers. It never sends; what it sees is handed on.
/// </summary>
/// <param name="watched">What to look for; asked before every look.</param>
/// <param name="names">The full names there are.</param>
/// <param name="see">Told only when what is there and what is open differ.</param>
public sealed class PortWatcher(Func<PortWatch?> watched, Func<PortWatch, IReadOnlyList<string>> names, Action<PortSight> see) : IDisposable
{
    // A lost port is to be known within 0.6 s; a look takes about a tenth of a millisecond.
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(400);
    private readonly ManualResetEvent _ends = new(false); // not disposed: a look that hangs in a driver may still come back

    public void Start() => new Thread(Run) { IsBackground = true, Name = "port watcher" }.Start();

    public void Look()
    {
        if (watched() is not { } watch)
        {
            return;
        }

        bool isOpen = watch.Device is not null;
        bool isThere = watch.IsThere(names(watch));
        if (isThere != isOpen)
        {
            see(new(watch, isThere));
        }
    }

    public void Dispose() => _ends.Set();

    private void Run()
    {
        while (!_ends.WaitOne(BetweenLooks))
        {
            Look();
        }
    }
}
