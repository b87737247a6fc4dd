using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Turns the bytes of a file into text, or says why they are none.</summary>
internal static class Utf8Text
{
    internal const int MostBytes = 1024 * 1024;

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    internal static FileRead<SourceText> Decode(string file, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > MostBytes)
        {
            return new(null, [FileProblem.Whole(file, StorageTexts.TooLarge)]);
        }

        if (bytes.StartsWith(ByteOrderMark))
        {
            bytes = bytes[ByteOrderMark.Length..];
        }

        int good = ValidLength(bytes);
        SourceText source = new(file, Encoding.UTF8.GetString(bytes[..good]));
        if (good < bytes.Length)
        {
            return new(null, [source.Problem(EndOf(source), StorageTexts.NotUtf8)]);
        }

        List<FileProblem> faults = CharacterFaults(source);
        return faults.Count == 0 ? new(source, []) : new(null, faults);
    }

    private static int ValidLength(ReadOnlySpan<byte> bytes)
    {
        int at = Utf8.IsValid(bytes) ? bytes.Length : 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out int used) == OperationStatus.Done)
        {
            at += used;
        }

        return at;
    }

    private static YamlPlace EndOf(SourceText source) => new(source.Lines.Count, source.Lines[^1].Length + 1, 1);

    private static List<FileProblem> CharacterFaults(SourceText source)
    {
        List<FileProblem> faults = [];
        for (int line = 1; line <= source.Lines.Count && faults.Count < ProblemList.Most; line++)
        {
            if (CharacterFault(source, line) is { } fault)
            {
                faults.Add(fault);
            }
        }

        return faults;
    }

    private static FileProblem? CharacterFault(SourceText source, int number)
    {
        string line = source.Line(number);
        int first = Printable.FirstForbidden(line.Replace('\t', ' '));
        if (first >= 0)
        {
            return source.Problem(new(number, first + 1, 1), StorageTexts.Forbidden(line[first]));
        }

        int tab = line.AsSpan(0, line.Length - line.AsSpan().TrimStart().Length).IndexOf('\t');
        bool blank = string.IsNullOrWhiteSpace(line);
        return tab < 0 || blank ? null : source.Problem(new(number, tab + 1, 1), StorageTexts.TabIndent);
    }
}
