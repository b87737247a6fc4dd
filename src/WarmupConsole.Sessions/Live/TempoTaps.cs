using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// Taps of one tempo. Common practice: the mean of the last ones counts, three intervals are the least that give a tempo, and a
/// pause begins anew. A press too soon after another (a bounce, a key held down) is no tap.
/// </summary>
/// <param name="At">The last <see cref="Most"/> taps that belong together, in order.</param>
/// <param name="LastPress">The newest press of the key, whether it was a tap or not; null before the first.</param>
public sealed record TempoTaps(IReadOnlyList<Moment> At, Moment? LastPress)
{
    /// <summary>As many taps give a tempo.</summary>
    public const int Fewest = 4;

    /// <summary>Only so many taps count.</summary>
    public const int Most = 8;

    // A beat of the quickest and of the slowest tempo there is.
    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(60.0 / Tempo.FastestBeatsPerMinute);
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60.0 / Tempo.SlowestBeatsPerMinute);

    /// <summary>Nothing was tapped.</summary>
    public static TempoTaps None { get; } = new([], null);

    /// <summary>How many taps are missing for a tempo; 0 when it is known.</summary>
    public int Missing => Math.Max(0, Fewest - At.Count);

    /// <summary>The mean of the taps in whole beats a minute (a key's moment is no finer), or null while there are too few.</summary>
    public Tempo? Mean => Missing > 0 ? null : Rounded(60_000 * (At.Count - 1) / (At[^1] - At[0]).TotalSeconds);

    /// <summary>The taps after one more press.</summary>
    public TempoTaps After(Moment press)
    {
        if (press - LastPress < Shortest)
        {
            return this with { LastPress = press };
        }

        return new(BeginsAnew(press) ? [press] : [.. At.Skip(At.Count + 1 - Most), press], press);
    }

    /// <summary>After more than a beat of the slowest tempo, or of more than twice the beats tapped so far.</summary>
    private bool BeginsAnew(Moment press) => At.Count > 0
        && (press - At[^1] > Longest || (At.Count > 1 && (press - At[^1]) * (At.Count - 1) > (At[^1] - At[0]) * 2));

    private static Tempo Rounded(double milliBeatsPerMinute) =>
        Tempo.Clamp((int)Math.Round(milliBeatsPerMinute / 1000, MidpointRounding.AwayFromZero) * 1000);
}
