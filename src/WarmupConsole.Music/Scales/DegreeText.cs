using System.Globalization;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Music.Scales;

/// <summary>
/// Degrees in and out. As numbers: "1", "b3", "#4", "8", "10", and "7," for below the tonic; they follow the scale of the mode.
/// As tonic sol-fa: "do", "me", "so,", "do'"; a syllable is the same distance above do in every mode, so in minor the third is "me".
/// </summary>
public static class DegreeText
{
    /// <summary>The highest number that may be written: the seventh in the third octave.</summary>
    public const int HighestNumber = 21;

    private const int MostSigns = 2;
    private const int MostOctavesDown = 3;
    private const int MostOctavesUp = 2;

    /// <summary>As a number: "8", "b3", "7,".</summary>
    public static string Write(Degree degree)
    {
        string sign = new(degree.Alteration < 0 ? 'b' : '#', Math.Abs(degree.Alteration));
        return degree.Octave >= 0
            ? sign + (degree.Number + (7 * degree.Octave)).ToString(CultureInfo.InvariantCulture)
            : sign + degree.Number.ToString(CultureInfo.InvariantCulture) + new string(',', -degree.Octave);
    }

    /// <summary>As tonic sol-fa; as a number where sol-fa has no syllable (a flat fourth).</summary>
    public static string WriteSolfa(Degree degree, Mode mode)
    {
        int fromMajor = ModeData.Semitones(mode, degree.Number) - ModeData.Semitones(Mode.Major, degree.Number);
        string? syllable = SolfaData.Find(degree.Number, degree.Alteration + fromMajor);
        return syllable is null
            ? Write(degree)
            : syllable + new string(degree.Octave < 0 ? ',' : '\'', Math.Abs(degree.Octave));
    }

    /// <summary>Reads a number or a sol-fa syllable.</summary>
    /// <param name="text">Without spaces around it.</param>
    /// <param name="mode">Only sol-fa asks for it: where the mode already has the lowered third, "me" is its plain third.</param>
    public static Parsed<Degree> Parse(string text, Mode mode = Mode.Major) => TryParse(text, mode, out Degree degree)
        ? ParsedFactory.Value(degree)
        : ParsedFactory.Error<Degree>(text, MusicTextErrors.Degree(text));

    /// <summary>Reads a number or a sol-fa syllable; false when it is neither. See <see cref="Parse"/>.</summary>
    public static bool TryParse(string text, Mode mode, out Degree degree)
    {
        string body = text.TrimEnd(',');
        int down = text.Length - body.Length;
        return TrySolfa(text, mode, out degree) || (down <= MostOctavesDown && TryNumber(body, down, out degree));
    }

    private static bool TryNumber(string text, int octavesDown, out Degree degree)
    {
        degree = default;
        string digits = text.TrimStart('b', '#', '♭', '♯');
        string signs = text[..^digits.Length];
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            || number is < 1 or > HighestNumber || signs.Length > MostSigns)
        {
            return false;
        }

        int alteration = signs.Sum(sign => sign is 'b' or '♭' ? -1 : 1);
        degree = new(((number - 1) % 7) + 1, alteration, ((number - 1) / 7) - octavesDown);
        return true;
    }

    private static bool TrySolfa(string text, Mode mode, out Degree degree)
    {
        degree = default;
        string syllable = text.TrimEnd('\'', ',', '’');
        string marks = text[syllable.Length..];
        int octave = marks.Sum(mark => mark == ',' ? -1 : 1);
        if (!SolfaData.TryFind(syllable, out (int Number, int Alteration) found)
            || Math.Abs(octave) != marks.Length || octave is < -MostOctavesDown or > MostOctavesUp)
        {
            return false;
        }

        int fromMajor = ModeData.Semitones(mode, found.Number) - ModeData.Semitones(Mode.Major, found.Number);
        degree = new(found.Number, found.Alteration - fromMajor, octave);
        return true;
    }
}
