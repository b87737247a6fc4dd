using WarmupConsole.App.Running;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.MusicXml;
using WarmupConsole.Storage.Scores;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Scores;

/// <summary>A score with the choir that sings it.</summary>
/// <param name="Folder">The choir.</param>
/// <param name="Path">The score's file.</param>
/// <param name="Score">What is usable of it.</param>
/// <param name="Problems">What is wrong with it.</param>
/// <param name="IsWhole">False when something of it is missing.</param>
/// <param name="Map">Who sings what.</param>
/// <param name="MapPath">The mapping file it was read from; null when it is guessed.</param>
/// <param name="Language">The language of the words as the mapping file or the score says, or empty.</param>
internal sealed record OpenedScore(
    ChoirFolder Folder,
    string Path,
    Score Score,
    IReadOnlyList<FileProblem> Problems,
    bool IsWhole,
    ScoreMap Map,
    string? MapPath,
    string Language)
{
    private const string ScoresFolder = "scores";
    private const string ChoirFileName = "choir.yaml";

    /// <summary>The title that the score gives itself, else its file name.</summary>
    internal string Title => Score.Title.Length > 0 ? Score.Title : System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>0, or 1 when something of the score is missing.</summary>
    internal int ExitCode => IsWhole ? ExitCodes.Ok : ExitCodes.Findings;

    internal static FileRead<OpenedScore> Load(Composition composition, string file, string? choir)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, choir ?? ChoirAround(file));
        if (!folder.IsGood)
        {
            return new(null, folder.Problems);
        }

        string path = Found(file, folder.Value);
        ScoreFile read = MusicXmlFile.Read(path);
        return read.Score is { } score ? Mapped(folder.Value, path, read, score) : new(null, read.Problems);
    }

    private static FileRead<OpenedScore> Mapped(ChoirFolder folder, string path, ScoreFile read, Score score)
    {
        string? mapPath = ScoreMapFile.Find(folder, path);
        FileRead<MappedScore> map = mapPath is null
            ? new(new(ScoreMap.Guess(score, folder.Choir.Parts), ""), [])
            : ScoreMapFile.Load(mapPath, score, folder.Choir.Parts);
        return map.IsGood
            ? new(new(folder, path, score, read.Problems, read.IsWhole, map.Value.Map, mapPath, map.Value.Language.Length > 0 ? map.Value.Language : score.Language), [])
            : new(null, map.Problems);
    }

    /// <summary>The file as named, or the one of that name in the choir's scores.</summary>
    private static string Found(string file, ChoirFolder folder) =>
        File.Exists(file) || System.IO.Path.GetFileName(file) != file
            ? file
            : ((IEnumerable<string>)[folder.WriteRoot, folder.Root]).Select(root => System.IO.Path.Combine(root, ScoresFolder, file)).FirstOrDefault(File.Exists) ?? file;

    /// <summary>The choir's folder when the score stands in its scores folder.</summary>
    private static string? ChoirAround(string file)
    {
        string? folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(file));
        string? root = System.IO.Path.GetFileName(folder) == ScoresFolder ? System.IO.Path.GetDirectoryName(folder) : null;
        return root is not null && File.Exists(System.IO.Path.Combine(root, ChoirFileName)) ? root : null;
    }
}
