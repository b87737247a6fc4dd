using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads scores in MusicXML 3.1 and 4.0 (older ones too): .musicxml, .xml, .mxl, partwise and timewise. Nothing is fetched, nothing written.</summary>
public static class MusicXmlFile
{
    /// <summary>The endings of their names.</summary>
    public static IReadOnlyList<string> Extensions { get; } = [".musicxml", ".mxl", ".xml"];

    public static ScoreFile Read(string path)
    {
        FileRead<byte[]> bytes = BoundedFile.Read(path, MusicXmlLimits.MostBytes, MusicXmlTexts.TooLarge);
        return bytes.IsGood ? Parse(path, bytes.Value) : new(null, bytes.Problems, false);
    }

    /// <param name="file">As problems name it.</param>
    /// <param name="bytes">All of it.</param>
    public static ScoreFile Parse(string file, byte[] bytes)
    {
        if (!Container.IsZip(bytes))
        {
            return bytes.Length > 0 && Path.GetExtension(file) == ".mxl" && bytes[0] != '<' ? ScoreFile.Refused(file, MusicXmlTexts.NotAZip) : ParseXml(file, bytes, []);
        }

        (byte[]? inside, FileProblem? known) = Container.Open(file, bytes);
        return inside is null ? new(null, [known!], false) : ParseXml(file, inside, known is null ? [] : [known]);
    }

    private static ScoreFile ParseXml(string file, byte[] bytes, IReadOnlyList<FileProblem> known)
    {
        (string? encoded, FileProblem? fault) = XmlText.Decode(file, bytes);
        if (encoded is null)
        {
            return new(null, [.. known, fault!], false);
        }

        (string text, IReadOnlyList<string> names) = Entities.Disarmed(encoded);
        ScoreProblems problems = new(file, text);
        problems.Take(known);
        problems.Take(fault is null ? [] : [fault]);
        foreach (string name in names)
        {
            problems.Note((0, 0), MusicXmlTexts.NoEntity(name));
        }

        Music.Repertoire.Score? score = ScoreReader.Read(text, problems);
        return new(score, problems.All, score is not null && problems.IsWhole);
    }
}
