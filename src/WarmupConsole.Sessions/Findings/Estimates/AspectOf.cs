using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>What a pitch in a rung is like, in every aspect; empty where it is not known.</summary>
/// <param name="range">The part's comfortable range.</param>
/// <param name="longest">Minutes of the longest warm-up.</param>
internal sealed class AspectOf(PitchRange range, double longest)
{
    private const double ShortSeconds = 0.45;
    private const double LongSeconds = 1.0;

    private static readonly string[] Thirds = ["first third", "second third", "last third"];
    private static readonly string[] Places = ["low", "middle", "high"];

    internal string Value(Aspect aspect, in ExposureRow row, ExposedPitch pitch) => aspect switch
    {
        Aspect.Pitch => pitch.Midi.ToString(CultureInfo.InvariantCulture),
        Aspect.Vowel => pitch.Vowel,
        Aspect.Loudness => pitch.Loudness < 0 ? "" : DynamicsData.Words[pitch.Loudness],
        Aspect.Length => pitch.Beats <= 0 || row.MilliBpm <= 0 ? "" : Length(pitch.Beats * 60_000 / row.MilliBpm),
        Aspect.Place => Place(pitch.Midi),
        _ => Thirds[ThirdOf(row)],
    };

    /// <summary>The third of the warm-up, from 0.</summary>
    internal int ThirdOf(in ExposureRow row) => Third(row.Minute / Math.Max(1, longest));

    private static string Length(double seconds) => seconds switch
    {
        < ShortSeconds => "short",
        >= LongSeconds => "long",
        _ => "middling",
    };

    private string Place(int midi)
    {
        if (!range.Contains(midi))
        {
            return midi < range.Low.Midi ? "below" : "above";
        }

        return Places[Third((midi - range.Low.Midi) / (double)Math.Max(1, range.Semitones))];
    }

    private static int Third(double position) => position switch
    {
        < 1.0 / 3 => 0,
        < 2.0 / 3 => 1,
        _ => 2,
    };
}
