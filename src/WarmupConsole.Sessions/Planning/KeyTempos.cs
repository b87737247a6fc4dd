using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning;

/// <summary>
/// The tempo of each key of a step: the same throughout, or changing evenly from the first key to the last. Each key's share begins
/// with the breath before it; keys beyond the last keep the last one's tempo.
/// </summary>
/// <param name="First">Of the first key.</param>
/// <param name="Last">Of the last key, if there is more than one.</param>
/// <param name="Keys">How many keys the ladder has as planned.</param>
public readonly record struct KeyTempos(Tempo First, Tempo Last, int Keys)
{
    /// <summary>The tempo of a key, from 0, to a thousandth of a beat a minute; the last one is met exactly.</summary>
    public Tempo At(int key)
    {
        int last = Math.Max(1, Keys - 1);
        long change = Last.MilliBeatsPerMinute - First.MilliBeatsPerMinute;
        return Tempo.Clamp(First.MilliBeatsPerMinute + (int)(change * Math.Clamp(key, 0, last) / last));
    }

    /// <summary>A tempo of one key, which may differ from the plan's, carried on to another key: by as much as the plan changes there.</summary>
    public Tempo Moved(Tempo present, int from, int to) =>
        Tempo.Clamp(present.MilliBeatsPerMinute + At(to).MilliBeatsPerMinute - At(from).MilliBeatsPerMinute);
}
