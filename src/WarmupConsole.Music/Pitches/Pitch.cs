using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Music.Pitches;

/// <summary>
/// A spelled pitch: letter, alteration in semitones (−3…3) and octave in scientific pitch notation, where C4 is middle C
/// and the number changes at C (so C♭4 sounds as B3). Spelling survives transposition; ask for <see cref="Midi"/> last.
/// Ordering is by sound, then by letter. The default is C0.
/// </summary>
public readonly record struct Pitch(Step Step, int Alteration, int Octave) : IComparable<Pitch>
{
    private static readonly int[] SemitonesAboveC = [0, 2, 4, 5, 7, 9, 11];

    /// <summary>Middle C, MIDI 60.</summary>
    public static Pitch MiddleC => new(Step.C, 0, 4);

    /// <summary>The MIDI number of what sounds; C4 = 60, A4 = 69. It may lie outside 0–127.</summary>
    public int Midi => (12 * (Octave + 1)) + SemitonesAboveC[(int)Step] + Alteration;

    /// <summary>Letter names counted from C0: a staff position.</summary>
    public int DiatonicNumber => (7 * Octave) + (int)Step;

    /// <summary>Moves by an interval and keeps the spelling: C4 up a minor second is D♭4, up an augmented unison C♯4.</summary>
    public Pitch Transpose(Interval interval)
    {
        int diatonic = DiatonicNumber + interval.Steps;
        int octave = (int)Math.Floor(diatonic / 7.0);
        Pitch natural = new((Step)(diatonic - (7 * octave)), 0, octave);
        return natural with { Alteration = Midi + interval.Semitones - natural.Midi };
    }

    /// <summary>The same pitch some octaves higher (or, negative, lower).</summary>
    public Pitch Octaves(int octaves) => this with { Octave = Octave + octaves };

    /// <summary>Reads scientific pitch notation: a letter, up to three of b ♭ # ♯, an octave from −1 to 9: "C4", "Bb3", "F#5".</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Pitch pitch) => PitchText.TryParse(text, out pitch);

    /// <exception cref="FormatException">The text is no pitch; the message says what one looks like.</exception>
    public static Pitch Parse(string text) => TryParse(text, out Pitch pitch)
        ? pitch
        : throw new FormatException($"'{text}' is no pitch: write a letter A to G, # or b if altered, and an octave, such as C4, Bb3 or F#5.");

    public int CompareTo(Pitch other) => Midi != other.Midi ? Midi.CompareTo(other.Midi) : DiatonicNumber.CompareTo(other.DiatonicNumber);

    public static bool operator <(Pitch a, Pitch b) => a.CompareTo(b) < 0;

    public static bool operator >(Pitch a, Pitch b) => a.CompareTo(b) > 0;

    public static bool operator <=(Pitch a, Pitch b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Pitch a, Pitch b) => a.CompareTo(b) >= 0;

    /// <summary>For showing, with real signs: "E♭4".</summary>
    public override string ToString() => PitchText.Name(this) + Octave.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The name without the octave, with real signs: "E♭".</summary>
    public string Name => PitchText.Name(this);

    /// <summary>For files and machines, in ASCII: "Eb4".</summary>
    public string ToAscii() => ToString().Replace('♭', 'b').Replace('♯', '#');
}
