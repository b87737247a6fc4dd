using System.IO.Compression;
using System.Xml;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>A compressed score (.mxl): a zip whose list of contents names the score. Nothing is ever unpacked to the disk.</summary>
internal static class Container
{
    private const string Contents = "META-INF/container.xml";
    private const string ScoreType = "application/vnd.recordare.musicxml+xml";

    internal static bool IsZip(ReadOnlySpan<byte> bytes) => bytes is [(byte)'P', (byte)'K', 3 or 5, 4 or 6, ..];

    /// <summary>The bytes of the score inside, and perhaps something to know about the container; or why there are none.</summary>
    internal static (byte[]? Score, FileProblem? Problem) Open(string file, byte[] bytes)
    {
        try
        {
            using ZipArchive zip = new(new MemoryStream(bytes), ZipArchiveMode.Read);
            return zip.Entries.Count > MusicXmlLimits.MostEntries ? Bad(file, MusicXmlTexts.ManyEntries) : Open(file, zip);
        }
        catch (Exception fault) when (fault is InvalidDataException or XmlException || FileFault.IsExpected(fault))
        {
            return Bad(file, MusicXmlTexts.Damaged(Printable.Line(fault.Message.TrimEnd('.'))));
        }
    }

    private static (byte[]? Score, FileProblem? Problem) Open(string file, ZipArchive zip)
    {
        ZipArchiveEntry? contents = zip.Entries.FirstOrDefault(entry => string.Equals(entry.FullName, Contents, StringComparison.OrdinalIgnoreCase));
        if (contents is null)
        {
            return zip.Entries.FirstOrDefault(IsScore) is { } first
                ? (Unpack(first, MusicXmlLimits.MostBytes), FileProblem.Whole(file, MusicXmlTexts.NoContainer)) is ({ } score, var known) ? (score, known) : Bad(file, MusicXmlTexts.Unpacked)
                : Bad(file, MusicXmlTexts.NoScoreInside);
        }

        string? path = Unpack(contents, MusicXmlLimits.MostContainerBytes) is { } list ? ScorePath(list) : null;
        if (path is null)
        {
            return Bad(file, MusicXmlTexts.NoScoreInside);
        }

        if (path.Split('/', '\\').Contains("..") || path.StartsWith('/') || path.Contains(':', StringComparison.Ordinal) || path.StartsWith('\\'))
        {
            return Bad(file, MusicXmlTexts.PointsOutside(path));
        }

        return zip.GetEntry(path) is not { } entry ? Bad(file, MusicXmlTexts.NotInside(path))
            : Unpack(entry, MusicXmlLimits.MostBytes) is { } bytes ? (bytes, null)
            : Bad(file, MusicXmlTexts.Unpacked);
    }

    private static bool IsScore(ZipArchiveEntry entry) =>
        !entry.FullName.StartsWith("META-INF/", StringComparison.OrdinalIgnoreCase) && Path.GetExtension(entry.FullName) is ".musicxml" or ".xml";

    /// <summary>The first file of the list that is a score, or, when none says what it is, the first.</summary>
    private static string? ScorePath(byte[] list)
    {
        using XmlReader xml = XmlReader.Create(new MemoryStream(list), XmlCursor.Settings());
        List<(string Path, string? Type)> files = [];
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "rootfile" } && xml.GetAttribute("full-path") is { } path)
            {
                files.Add((path, xml.GetAttribute("media-type")));
            }
        }

        return files.Select(file => file.Type is null or ScoreType ? file.Path : null).FirstOrDefault(path => path is not null) ?? files.FirstOrDefault().Path;
    }

    /// <summary>What an entry holds; null when it holds more than it may. The sizes that the zip states are not believed.</summary>
    private static byte[]? Unpack(ZipArchiveEntry entry, int mostBytes)
    {
        using Stream stream = entry.Open();
        using MemoryStream held = new();
        byte[] piece = new byte[65536];
        int length;
        while (held.Length <= mostBytes && (length = stream.Read(piece)) > 0)
        {
            held.Write(piece, 0, length);
        }

        return held.Length <= mostBytes ? held.ToArray() : null;
    }

    private static (byte[]? Score, FileProblem? Problem) Bad(string file, string message) => (null, FileProblem.Whole(file, message));
}
