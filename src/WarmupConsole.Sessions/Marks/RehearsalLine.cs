using System.Text.RegularExpressions;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Marks;

/// <summary>A line typed in the rehearsal: the piece, its bars, what was heard. "Harbour hymn 12-15 a flat at B4"; "18 t late" stays in the same piece.</summary>
/// <param name="Piece">The piece, or empty when none was named yet.</param>
/// <param name="Bars">Such as 12 or 12-15, or empty.</param>
/// <param name="Words">The mark itself, to be read as any other.</param>
public sealed partial record RehearsalLine(string Piece, string Bars, string Words)
{
    /// <summary>Everything before the first bar numbers is the piece; a line without bars is all mark, unless a colon ends the piece.</summary>
    /// <param name="raw">What was typed.</param>
    /// <param name="lastPiece">The piece that holds when none is named.</param>
    public static RehearsalLine Read(string raw, string lastPiece)
    {
        ArgumentNullException.ThrowIfNull(raw);
        string clean = MarkText.Clean(raw);
        if (Bar().Match(clean) is { Success: true } bars)
        {
            return new(Piece(clean[..bars.Index]), bars.Groups[1].Value.Replace(" ", "", StringComparison.Ordinal), clean[(bars.Index + bars.Length)..].Trim());
        }

        int colon = clean.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 ? new(Piece(clean[..colon]), "", clean[(colon + 1)..].Trim()) : new(lastPiece, "", clean);

        string Piece(string before) => before.Trim(' ', ',', ':') is { Length: > 0 } named ? named : lastPiece;
    }

    /// <summary>"Harbour hymn, bars 12-15: altos flat on B4".</summary>
    internal static string Echo(RehearsalLine line, MarkContent content, Choir choir)
    {
        string where = string.Join(", ", new[] { line.Piece, line.Bars.Length == 0 ? "" : line.Bars.Contains('-') ? $"bars {line.Bars}" : $"bar {line.Bars}" }.Where(words => words.Length > 0));
        string what = content.KindId is { } kind
            ? MarkWords.Sentence(choir, content.PartIds, MarkWords.What(choir, kind, content.Strength), MarkWords.Where(choir.Notes, content.Pitch, content.Place, null))
            : MarkText.Clean(line.Words);
        return where.Length == 0 ? what : what.Length == 0 ? where : $"{where}: {what}";
    }

    /// <summary>A number, or two with a dash between them, as a word of its own; "bar" or "bars" may stand before it.</summary>
    [GeneratedRegex(@"(?:(?<=^|[\s,:])bars?\s+)?(?<=^|[\s,:])(\d{1,4}(?:\s?[-–]\s?\d{1,4})?)(?=$|[\s,:])[\s,:]*", RegexOptions.IgnoreCase)]
    private static partial Regex Bar();
}
