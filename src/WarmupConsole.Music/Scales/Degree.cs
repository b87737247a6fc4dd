namespace WarmupConsole.Music.Scales;

/// <summary>
/// A scale degree relative to the tonic: number 1–7, alteration in semitones against the scale, and octaves above (or below)
/// the tonic's own. The octave of the tonic, written 8, is number 1 in octave 1. Text: <see cref="DegreeText"/>.
/// </summary>
public readonly record struct Degree(int Number, int Alteration, int Octave)
{
    public static Degree Tonic => new(1, 0, 0);

    /// <summary>As a director writes it: 8 for the upper tonic, b3, #4, 7, for the note below the tonic, 10 for the third above the octave.</summary>
    public override string ToString() => DegreeText.Write(this);
}
