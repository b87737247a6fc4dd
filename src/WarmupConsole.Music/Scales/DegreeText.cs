using System.Globalization;

namespace WarmupConsole.Music.Scales;

/// <summary>Degrees in and out, as numbers: "1", "b3", "#4", "8", "10", and "7," for below the tonic.</summary>
public static class DegreeText
{
    public static string Write(Degree degree)
    {
        string sign = new(degree.Alteration < 0 ? 'b' : '#', Math.Abs(degree.Alteration));
        return degree.Octave >= 0
            ? sign + (degree.Number + (7 * degree.Octave)).ToString(CultureInfo.InvariantCulture)
            : sign + degree.Number.ToString(CultureInfo.InvariantCulture) + new string(',', -degree.Octave);
    }
}
