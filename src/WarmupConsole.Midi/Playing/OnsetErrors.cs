namespace WarmupConsole.Midi.Playing;

/// <summary>Keeps the onset errors of the last 4096 notes, and the worst of all.</summary>
internal sealed class OnsetErrors
{
    private readonly long[] _latest = new long[4096];
    private int _played;
    private int _dropped;
    private long _worst;

    internal void Played(long errorNanoseconds)
    {
        _latest[_played++ % _latest.Length] = errorNanoseconds;
        _worst = Math.Max(_worst, errorNanoseconds);
    }

    internal void Dropped() => _dropped++;

    internal OnsetFigures Figures()
    {
        long[] sorted = _latest[..Math.Min(_played, _latest.Length)];
        Array.Sort(sorted);
        return new(_played, _dropped, At(sorted, 50), At(sorted, 99), _worst);
    }

    // The nearest rank: the smallest error that so many percent do not exceed.
    private static long At(long[] sorted, int percent) =>
        sorted.Length == 0 ? 0 : sorted[((sorted.Length * percent) + 99) / 100 - 1];
}
