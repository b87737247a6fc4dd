using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Scales;

/// <summary>A tonic by name, without an octave, and a mode: D♭ major, C♯ minor.</summary>
/// <param name="Step">Letter of the tonic.</param>
/// <param name="Alteration">Its alteration in semitones.</param>
/// <param name="Mode">The mode.</param>
public readonly record struct Key(Step Step, int Alteration, Mode Mode)
{
    private static readonly int[] FifthsFromC = [0, 2, 4, -1, 1, 3, 5];

    private static readonly Degree[] Dominant = [new(5, 0, 0), new(7, 0, 0), new(2, 0, 1), new(4, 0, 1)];

    public static Key Of(Pitch tonic, Mode mode) => new(tonic.Step, tonic.Alteration, mode);

    /// <summary>The key signature: sharps counted upwards, flats downwards; D♭ major is −5. Beyond ±7 a key has no ordinary signature.</summary>
    public int Fifths => FifthsFromC[(int)Step] + (7 * Alteration) + ModeData.SignatureFifths(Mode);

    /// <summary>The tonic in an octave.</summary>
    public Pitch TonicIn(int octave) => new(Step, Alteration, octave);

    /// <summary>The seven pitches from a tonic upwards, spelled for the key.</summary>
    public IReadOnlyList<Pitch> Scale(int octave)
    {
        Key key = this;
        return [.. Enumerable.Range(1, 7).Select(number => key.PitchOf(new(number, 0, 0), octave))];
    }

    /// <summary>A degree as it sounds when the tonic stands in an octave.</summary>
    public Pitch PitchOf(Degree degree, int octave) => TonicIn(octave).Transpose(ModeData.IntervalOf(Mode, degree));

    /// <summary>The dominant seventh upwards from its root, above the tonic of an octave: the leading note is raised in every mode.</summary>
    public IReadOnlyList<Pitch> DominantSeventh(int octave)
    {
        Key major = this with { Mode = Mode.Major };
        return [.. Dominant.Select(degree => major.PitchOf(degree, octave))];
    }

    /// <summary>"D♭ major".</summary>
    public override string ToString() => $"{TonicIn(0).Name} {ModeData.Words(Mode)}";
}
