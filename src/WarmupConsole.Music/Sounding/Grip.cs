namespace WarmupConsole.Music.Sounding;

/// <summary>A chord under the hands: the left has the bass, the right three tones in close position. MIDI numbers, from the lowest to the highest.</summary>
/// <param name="Bass">The left hand.</param>
/// <param name="Low">The lowest of the right hand.</param>
/// <param name="Middle">The middle of the right hand.</param>
/// <param name="Top">The highest of the right hand.</param>
/// <param name="IsInverted">True when the third lies in the bass.</param>
public readonly record struct Grip(int Bass, int Low, int Middle, int Top, bool IsInverted)
{
    /// <summary>How many voices there are.</summary>
    public const int Voices = 4;

    /// <summary>A voice, from the bass (0) upwards.</summary>
    public int this[int voice] => voice switch
    {
        0 => Bass,
        1 => Low,
        2 => Middle,
        _ => Top,
    };
}
