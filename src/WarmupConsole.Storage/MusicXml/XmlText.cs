using System.Buffers;
using System.Text;
using System.Text.Unicode;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Turns the bytes of an XML file into text: UTF-8 and UTF-16 with or without a mark, and Latin-1 where the file says so.</summary>
internal static class XmlText
{
    private const int DeclarationBytes = 200;
    private static readonly string[] Utf8Names = ["", "UTF-8", "UTF8", "US-ASCII", "ASCII"];
    private static readonly string[] Latin1Names = ["ISO-8859-1", "LATIN1", "LATIN-1", "WINDOWS-1252"];

    /// <summary>The text, and what is wrong with its encoding; null when it cannot be read at all.</summary>
    internal static (string? Text, FileProblem? Problem) Decode(string file, ReadOnlySpan<byte> bytes) => bytes switch
    {
        [] => (null, FileProblem.Whole(file, MusicXmlTexts.Empty)),
        [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] or [0, 0, 0, 0x3C, ..] or [0x3C, 0, 0, 0, ..] => (null, FileProblem.Whole(file, MusicXmlTexts.Utf32)),
        [0xFF, 0xFE, ..] => (Encoding.Unicode.GetString(bytes[2..]), null),
        [0xFE, 0xFF, ..] => (Encoding.BigEndianUnicode.GetString(bytes[2..]), null),
        [0x3C, 0, ..] => (Encoding.Unicode.GetString(bytes), null),
        [0, 0x3C, ..] => (Encoding.BigEndianUnicode.GetString(bytes), null),
        [0xEF, 0xBB, 0xBF, ..] => OneByteUnits(file, bytes[3..]),
        _ => OneByteUnits(file, bytes),
    };

    private static (string Text, FileProblem? Problem) OneByteUnits(string file, ReadOnlySpan<byte> bytes)
    {
        string said = Declared(bytes);
        if (Latin1Names.Contains(said))
        {
            return (Encoding.Latin1.GetString(bytes), null);
        }

        string text = Encoding.UTF8.GetString(bytes);
        FileProblem? problem = !Utf8Names.Contains(said) ? FileProblem.Whole(file, MusicXmlTexts.OtherEncoding(said))
            : Utf8.IsValid(bytes) ? null
            : NotUtf8(file, bytes);
        return (text, problem);
    }

    /// <summary>The encoding that the first line names, in capitals; empty when it names none.</summary>
    private static string Declared(ReadOnlySpan<byte> bytes)
    {
        string head = Encoding.Latin1.GetString(bytes[..Math.Min(DeclarationBytes, bytes.Length)]);
        int end = head.StartsWith("<?xml", StringComparison.Ordinal) ? head.IndexOf("?>", StringComparison.Ordinal) : -1;
        int at = end < 0 ? -1 : head.IndexOf("encoding", 0, end, StringComparison.Ordinal);
        string[] halves = at < 0 ? [] : head[at..end].Split('"', '\'');
        return halves.Length >= 3 ? halves[1].ToUpperInvariant() : "";
    }

    private static FileProblem NotUtf8(string file, ReadOnlySpan<byte> bytes)
    {
        (int at, int line, int column) = (0, 1, 1);
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out Rune rune, out int used) == OperationStatus.Done)
        {
            at += used;
            (line, column) = rune.Value == '\n' ? (line + 1, 1) : (line, column + rune.Utf16SequenceLength);
        }

        return new(file, line, column, 1, MusicXmlTexts.NotUtf8("UTF-8"), "");
    }
}
