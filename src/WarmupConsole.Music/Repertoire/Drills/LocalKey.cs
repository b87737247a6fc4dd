using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>The key that holds at a place of a score, and the degrees of pitches in it.</summary>
/// <param name="Tonic">Its tonic, in the octave that suits the line.</param>
/// <param name="Mode">Major or minor, as the key signature says.</param>
internal readonly record struct LocalKey(Pitch Tonic, Mode Mode)
{
    private const string ByFifths = "FCGDAEB";
    private const string ByStep = "CDEFGAB";
    private const int MinorFifths = 3;
    private const int Letters = 7;
    private const int MostSigns = 2;

    /// <summary>A line lies best about a third above its tonic.</summary>
    private const int AboveTonic = 4;

    /// <summary>The key of a line; without a key signature C major.</summary>
    internal static LocalKey Of(KeyChange? key, IEnumerable<Pitch> pitches)
    {
        int[] midis = [.. pitches.Select(pitch => pitch.Midi).Order()];
        bool isMinor = key is { IsMinor: true };
        int place = (key?.Fifths ?? 0) + (isMinor ? MinorFifths : 0) + 1;
        Step step = (Step)ByStep.IndexOf(ByFifths[((place % Letters) + Letters) % Letters], StringComparison.Ordinal);
        int alteration = (int)Math.Floor(place / (double)Letters);
        int middle = midis[midis.Length / 2];
        int octave = Enumerable.Range(-1, 10).MinBy(octave => Math.Abs(middle - AboveTonic - new Pitch(step, alteration, octave).Midi));
        return new(new(step, alteration, octave), isMinor ? Mode.Minor : Mode.Major);
    }

    /// <summary>The degree as it is spelled; respelled where that would take more than two signs.</summary>
    internal Degree DegreeOf(Pitch pitch)
    {
        LocalKey key = this;
        int steps = pitch.DiatonicNumber - Tonic.DiatonicNumber;
        return ((int[])[0, 1, -1]).Select(more => key.Degree(pitch, steps + more)).OrderBy(degree => Math.Max(0, Math.Abs(degree.Alteration) - MostSigns)).First();
    }

    private Degree Degree(Pitch pitch, int steps)
    {
        int octave = (int)Math.Floor(steps / (double)Letters);
        Degree plain = new(steps - (Letters * octave) + 1, 0, octave);
        return plain with { Alteration = pitch.Midi - Tonic.Midi - ModeData.IntervalOf(Mode, plain).Semitones };
    }
}
