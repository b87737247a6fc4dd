using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Music.Pitches;

/// <summary>
/// How a choir names its notes, on the screen and in what is typed. Files and logs are written in scientific names whatever the
/// setting. What is typed is read by the setting alone: "B" is the note above A♯ in English and B♭ in German, "c1" is C1 in
/// scientific and C4 in German names.
/// </summary>
public sealed class NoteNaming
{
    private readonly NoteNames _names;
    private readonly OctaveStyle _octaves;

    private NoteNaming(string id, Func<Step, int, IEnumerable<string>> spellings, OctaveStyle octaves)
    {
        (Id, _names, _octaves) = (id, new(spellings), octaves);
    }

    /// <summary>C4, B♭3, F♯5: the octave number changes at C, C4 is middle C.</summary>
    public static NoteNaming Scientific { get; } = new("scientific", NoteNameData.English, OctaveStyle.Number);

    /// <summary>c', b♭, f♯'': English letters, c' is middle C, c the C below, C the one below that.</summary>
    public static NoteNaming Helmholtz { get; } = new("helmholtz", NoteNameData.English, OctaveStyle.Primes);

    /// <summary>c1, b, fis2: h and b, is and es; c1 is middle C, c the C below, C the one below that.</summary>
    public static NoteNaming German { get; } = new("german", NoteNameData.German, OctaveStyle.LineNumbers);

    /// <summary>c1, bes, fis2: b and bes, is and es; octaves as in German.</summary>
    public static NoteNaming Dutch { get; } = new("dutch", NoteNameData.Dutch, OctaveStyle.LineNumbers);

    /// <summary>Do4, Si♭3, Fa♯5: do is always C; octaves as in scientific names.</summary>
    public static NoteNaming FixedDo { get; } = new("fixed-do", NoteNameData.FixedDo, OctaveStyle.Number);

    /// <summary>All of them, the usual one first.</summary>
    public static IReadOnlyList<NoteNaming> All { get; } = [Scientific, Helmholtz, German, Dutch, FixedDo];

    /// <summary>The name in files: "scientific", "helmholtz", "german", "dutch" or "fixed-do".</summary>
    public string Id { get; }

    /// <summary>A pitch with its octave: "E♭4", "e♭'", "es1", "Mi♭4".</summary>
    public string Write(Pitch pitch) => OctaveText.Write(_octaves, WriteName(pitch), pitch.Octave);

    /// <summary>A pitch without its octave, as keys are named: "E♭", "Es", "Mi♭".</summary>
    public string WriteName(Pitch pitch) => _names.Write(pitch.Step, pitch.Alteration);

    /// <summary>Reads a pitch with its octave. In Helmholtz, German and Dutch names a bare letter has one: c is C3, C is C2.</summary>
    public bool TryParse([NotNullWhen(true)] string? text, out Pitch pitch)
    {
        string typed = text?.Trim() ?? "";
        for (int length = Math.Min(typed.Length, _names.Longest); length > 0; length--)
        {
            if (_names.TryFind(typed[..length], out pitch) && OctaveText.TryParse(_octaves, typed, length, out int octave))
            {
                pitch = pitch with { Octave = octave };
                return true;
            }
        }

        pitch = default;
        return false;
    }

    /// <summary>Reads a name without octave, large or small; the pitch is given in the octave of middle C.</summary>
    public bool TryParseName([NotNullWhen(true)] string? text, out Pitch pitch) => _names.TryFind(text?.Trim() ?? "", out pitch);

    public override string ToString() => Id;
}
