using System.Globalization;

namespace WarmupConsole.Music.Pitches;

/// <summary>
/// Octaves in and out. The small letters begin at C3 and count upwards, the large ones end with B2 and count downwards; primes and
/// numbers mean the same and are both read.
/// </summary>
internal static class OctaveText
{
    private const int LowestSmall = 3;
    private const int LowestOctave = -1;
    private const int HighestOctave = 9;

    internal static string Write(OctaveStyle style, string name, int octave) => style switch
    {
        OctaveStyle.Number => name + octave.ToString(CultureInfo.InvariantCulture),
        _ when octave >= LowestSmall => name.ToLowerInvariant() + Marks(style, octave - LowestSmall, '\''),
        _ => name + Marks(style, LowestSmall - 1 - octave, ','),
    };

    /// <summary>Reads what follows the first characters of a text, which are the name.</summary>
    internal static bool TryParse(OctaveStyle style, string text, int nameLength, out int octave)
    {
        ReadOnlySpan<char> rest = text.AsSpan(nameLength);
        if (style == OctaveStyle.Number)
        {
            return int.TryParse(rest, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out octave) && octave is >= LowestOctave and <= HighestOctave;
        }

        bool isLarge = char.IsUpper(text[0]);
        int? marks = Count(rest, isLarge);
        octave = isLarge ? LowestSmall - 1 - (marks ?? 0) : LowestSmall + (marks ?? 0);
        return marks is not null && octave is >= LowestOctave and <= HighestOctave;
    }

    private static string Marks(OctaveStyle style, int count, char sign) => style == OctaveStyle.Primes
        ? new string(sign, count)
        : count > 0 ? count.ToString(CultureInfo.InvariantCulture) : "";

    private static int? Count(ReadOnlySpan<char> marks, bool isLarge)
    {
        if (marks.Length == 1 && char.IsAsciiDigit(marks[0]))
        {
            return marks[0] - '0';
        }

        int count = 0;
        foreach (char mark in marks)
        {
            int worth = isLarge ? Comma(mark) : Prime(mark);
            if (worth == 0)
            {
                return null;
            }

            count += worth;
        }

        return count;
    }

    private static int Comma(char mark) => mark is ',' or '͵' ? 1 : 0;

    private static int Prime(char mark) => mark switch
    {
        '\'' or '′' or '’' => 1,
        '″' or '"' => 2,
        '‴' => 3,
        _ => 0,
    };
}
