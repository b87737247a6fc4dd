using System.Text;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Scores;

/// <summary>Mapping files in and out, as docs/plan-format.md says.</summary>
public static class ScoreMapFile
{
    private const string Folder = "scores";
    private const string Extension = ".yaml";

    /// <summary>Where the mapping of a score is read from, or null when there is none: written aside for a demo choir, else in the folder.</summary>
    public static string? Find(ChoirFolder folder, string score) =>
        ((IEnumerable<string>)[folder.WriteRoot, folder.Root]).Select(root => Path.Combine(root, Folder, NameFor(score))).FirstOrDefault(File.Exists);

    /// <summary>Where the mapping of a score is written.</summary>
    public static string PathFor(ChoirFolder folder, string score) => Path.Combine(folder.WriteRoot, Folder, NameFor(score));

    /// <summary>Reads a file and looks its names up.</summary>
    public static FileRead<MappedScore> Load(string path, Score score, IReadOnlyList<Part> parts)
    {
        FileRead<byte[]> bytes = BoundedFile.Read(path, Utf8Text.MostBytes);
        return bytes.IsGood ? Read(path, bytes.Value, score, parts) : new(null, bytes.Problems);
    }

    /// <summary>The lines that the file names, and those it leaves out as they are guessed.</summary>
    /// <param name="file">As problems name it.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="score">The score it is about; null to judge the form alone.</param>
    /// <param name="parts">The parts of the choir.</param>
    public static FileRead<MappedScore> Read(string file, ReadOnlySpan<byte> bytes, Score? score, IReadOnlyList<Part> parts)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, ScoreMapFields.Map);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader reader = opened.Value;
        string language = reader.Text("language", "");
        ScoreMapReader lines = new(score, parts);
        foreach (MapReader fields in reader.Maps("lines"))
        {
            lines.Read(fields);
        }

        reader.Finish();
        return reader.Problems.Finish(new MappedScore(lines.Finish(), language));
    }

    /// <summary>Writes it to a file that is not there yet; null, or why it could not.</summary>
    public static string? WriteTo(string path, ScoreMap map) => NewFile.Write(path, Encoding.UTF8.GetBytes(Write(map)));

    public static string Write(ScoreMap map)
    {
        StringBuilder text = new("# Which part of the choir sings which line of the score; 'none' is left out.\nformat: 1\nlines:\n");
        foreach ((ScoreLine line, Part? singer, _) in map.Lines)
        {
            string voice = line.Voice.Length == 0 ? "" : $", voice: {YamlLine.Quote(line.Voice)}";
            string name = line.Part.Name.Length == 0 ? "" : $", name: {YamlLine.Quote(line.Part.Name)}";
            text.Append($"  - {{score: {YamlLine.Quote(line.Key)}{voice}{name}, part: {singer?.Id ?? ScoreMapFields.None}}}\n");
        }

        return text.ToString();
    }

    private static string NameFor(string score) => Path.GetFileNameWithoutExtension(score) + Extension;
}
