using System.Text;

namespace WarmupConsole.Tests.Storage.Yaml;

/// <summary>Spoils a file at random: single bits and stretches, whole lines, words and numbers, and pieces that parsers stumble over.</summary>
internal sealed class Mutator(Random random)
{
    private static readonly string[] Pieces =
    [
        "&x ", "*x", "!t ", "? ", "- ", ": ", "{", "}", "[", "]", "|", ">", "\"", "'", "\t", "#", "%", "@", "`", "---\n", "...\n", "<<: *x",
        "\0", "\u202E", "\r", "~", "\u00e9", "999999999999999999999", "\\u0000", "&x {a: [*x]}", ",,,,", "b", "#", "1/3", "-:64", ":", "/",
        "<", ">", "&", "&lt;", "&x;", "</note>", "<note>", "<chord/>", "<grace/>", "<!DOCTYPE a [<!ENTITY x \"y\">]>", "<!--", "]]>", "<duration>9999999999</duration>",
        "<pitch><step>H</step><octave>77</octave></pitch>", "<backup><duration>99</duration></backup>", "<voice>7</voice>", "<measure>", "</part>",
    ];

    private static readonly string[] Values =
        ["0", "-1", "1e9", "2147483648", "0.0001", "300", "20", "64", "200", "true", "null", "\"\"", "everyone", "any", "C4-G5", "Cb-1", "B#9", "I:3", "1", "7,,,", "#21", "2027-02-30", "9999-12-31", "1/960"];

    internal byte[] Spoil(string sample) => Spoil(Encoding.UTF8.GetBytes(random.Next(2) == 0 ? ByLines(sample) : sample));

    internal byte[] Spoil(byte[] sample)
    {
        List<byte> bytes = [.. sample];
        for (int change = random.Next(1, 4); change > 0 && bytes.Count > 0; change--)
        {
            Change(bytes);
        }

        return [.. bytes];
    }

    private void Change(List<byte> bytes)
    {
        int at = random.Next(bytes.Count);
        switch (random.Next(7))
        {
            case 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                bytes.RemoveRange(at, Math.Min(random.Next(1, 20), bytes.Count - at));
                break;
            case 2:
                bytes.InsertRange(at, Encoding.UTF8.GetBytes(Pieces[random.Next(Pieces.Length)]));
                break;
            case 3:
                int length = Math.Min(random.Next(1, 80), bytes.Count - at);
                bytes.InsertRange(random.Next(bytes.Count), bytes.GetRange(at, length));
                break;
            case 4:
                bytes.RemoveRange(at, bytes.Count - at);
                bytes.Add((byte)'\n');
                break;
            default:
                Digit(bytes, at);
                break;
        }
    }

    /// <summary>The next digit becomes another: many such files are still good, and what is made of them must be too.</summary>
    private void Digit(List<byte> bytes, int from)
    {
        int at = bytes.FindIndex(from, b => char.IsAsciiDigit((char)b));
        if (at >= 0)
        {
            bytes[at] = (byte)('0' + random.Next(10));
        }
    }

    /// <summary>Leaves out, doubles, swaps or sets in a line, or gives its field another value.</summary>
    private string ByLines(string sample)
    {
        List<string> lines = [.. sample.Split('\n')];
        int at = random.Next(lines.Count);
        switch (random.Next(5))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(random.Next(lines.Count), lines[at]);
                break;
            case 2:
                int other = random.Next(lines.Count);
                (lines[at], lines[other]) = (lines[other], lines[at]);
                break;
            case 3:
                lines[at] = random.Next(2) == 0 ? "  " + lines[at] : lines[at].TrimStart();
                break;
            default:
                int colon = lines[at].IndexOf(": ", StringComparison.Ordinal);
                lines[at] = colon < 0 ? lines[at] : $"{lines[at][..colon]}: {Values[random.Next(Values.Length)]}";
                break;
        }

        return string.Join('\n', lines);
    }
}
