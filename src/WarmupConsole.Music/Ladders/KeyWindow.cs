namespace WarmupConsole.Music.Ladders;

/// <summary>The tonics, as MIDI numbers written for placement 0, in which a pattern fits; none when low lies above high.</summary>
internal readonly record struct KeyWindow(int Low, int High)
{
    internal int Count => Math.Max(0, High - Low + 1);

    internal bool Contains(int tonic) => Low <= tonic && tonic <= High;

    internal KeyWindow And(KeyWindow other) => new(Math.Max(Low, other.Low), Math.Min(High, other.High));

    /// <summary>The tonic of the window that is nearest to a wished one; the window must not be empty.</summary>
    internal int Nearest(int tonic) => Math.Clamp(tonic, Low, High);
}
