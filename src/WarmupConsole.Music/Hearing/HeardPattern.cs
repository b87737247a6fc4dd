using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Hearing;

/// <summary>
/// How likely each note is, as a pitch class above the tonic, while somebody plays: the dominant seventh, the tonic chord, a note of the
/// pattern, or something beside it (a left hand, a slip). The shares are our own estimate.
/// </summary>
internal sealed class HeardPattern
{
    private const int Dominant = 7;
    private const double ChordTone = 1.0;
    private const double Slip = 0.05;
    private const double Accompanying = 0.08;
    private const double Right = 1.6;

    private HeardPattern(double[][] places) => Places = places;

    /// <summary>Of the dominant seventh, the tonic chord, then note by note of the pattern.</summary>
    internal double[][] Places { get; }

    /// <summary>Beside the pattern.</summary>
    internal double[] Beside { get; private init; } = [];

    internal static HeardPattern Of(Exercise exercise)
    {
        Mode mode = exercise.Mode;
        int[] tonic = [0, Semitones(mode, 3), Semitones(mode, 5)];
        int[] seventh = [Dominant, (Dominant + 4) % KeyHearing.Classes, (Dominant + 7) % KeyHearing.Classes, (Dominant + 10) % KeyHearing.Classes];
        IEnumerable<int> notes = (exercise.Pattern?.Notes ?? []).Where(note => note.Degree is not null)
            .Select(note => ((ModeData.IntervalOf(mode, note.Degree!.Value).Semitones % KeyHearing.Classes) + KeyHearing.Classes) % KeyHearing.Classes);
        return new([Shares(Slip, (seventh, ChordTone)), Shares(Slip, (tonic, ChordTone)), .. notes.Select(note => Shares(Slip, (tonic, Accompanying), ([note], Right)))])
        {
            Beside = Shares(Slip * 4, (tonic, ChordTone)),
        };
    }

    private static int Semitones(Mode mode, int number) => ModeData.Semitones(mode, number) % KeyHearing.Classes;

    private static double[] Shares(double floor, params (int[] Tones, double Weight)[] parts)
    {
        double[] shares = [.. Enumerable.Repeat(floor, KeyHearing.Classes)];
        foreach ((int[] tones, double weight) in parts)
        {
            foreach (int tone in tones)
            {
                shares[tone] += weight;
            }
        }

        double sum = shares.Sum();
        return [.. shares.Select(share => share / sum)];
    }
}
