using System.Globalization;

namespace WarmupConsole.Music.Pitches;

/// <summary>Scientific pitch notation in and out.</summary>
internal static class PitchText
{
    private const string Letters = "CDEFGAB";
    private const int MostSigns = 3;
    private const int HighestOctave = 9;
    private const int LowestOctave = -1;

    internal static string Name(Pitch pitch)
    {
        char sign = pitch.Alteration < 0 ? '♭' : '♯';
        return Letters[(int)pitch.Step] + new string(sign, Math.Abs(pitch.Alteration));
    }

    internal static bool TryParse(string? text, out Pitch pitch)
    {
        pitch = default;
        ReadOnlySpan<char> rest = text.AsSpan().Trim();
        if (rest.IsEmpty)
        {
            return false;
        }

        int step = Letters.IndexOf(char.ToUpperInvariant(rest[0]), StringComparison.Ordinal);
        rest = rest[1..];
        int alteration = 0;
        while (!rest.IsEmpty && Sign(rest[0]) is int sign and not 0)
        {
            alteration += sign;
            rest = rest[1..];
        }

        if (step < 0 || Math.Abs(alteration) > MostSigns
            || !int.TryParse(rest, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int octave)
            || octave is < LowestOctave or > HighestOctave)
        {
            return false;
        }

        pitch = new((Step)step, alteration, octave);
        return true;
    }

    private static int Sign(char sign) => sign switch
    {
        'b' or '♭' => -1,
        '#' or '♯' => 1,
        _ => 0,
    };
}
