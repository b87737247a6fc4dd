using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>The exercises that come with the program, kept inside it.</summary>
public static class Catalogue
{
    /// <summary>How problems name the files of the catalogue.</summary>
    public const string Name = "catalogue";

    private static readonly Lazy<FileRead<IReadOnlyList<Exercise>>> Loaded = new(ReadAll);

    /// <summary>All exercises of the catalogue; a problem here is a fault of the program.</summary>
    public static FileRead<IReadOnlyList<Exercise>> Load() => Loaded.Value;

    private static FileRead<IReadOnlyList<Exercise>> ReadAll()
    {
        ExerciseCollection all = new();
        foreach (FileRead<IReadOnlyList<Exercise>> file in EmbeddedFile.NamesUnder(Name + "/").AsParallel().AsOrdered().Select(name => ExerciseFile.Read(name, EmbeddedFile.Read(name))))
        {
            all.Add(Name, file);
        }

        return all.Finish();
    }
}
