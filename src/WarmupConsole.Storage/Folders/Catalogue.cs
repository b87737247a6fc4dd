using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.Storage.Folders;

/// <summary>The exercises that come with the program, kept inside it.</summary>
public static class Catalogue
{
    /// <summary>How problems name the files of the catalogue.</summary>
    public const string Name = "catalogue";

    private static readonly Lazy<ExerciseShelf> Shelf = new(() => new(EmbeddedFile.NamesUnder(Name + "/").SelectMany(BlocksOf)));

    /// <summary>By file and their order in it.</summary>
    public static ExerciseShelf Exercises => Shelf.Value;

    private static IEnumerable<ShelvedExercise> BlocksOf(string file)
    {
        string yaml = Encoding.UTF8.GetString(EmbeddedFile.Read(file)).ReplaceLineEndings("\n");
        foreach (Range block in ExerciseBlocks.In(yaml)!)
        {
            yield return new(ExerciseBlocks.IdOf(yaml.AsSpan(block)), () => Read(file, yaml[block]));
        }
    }

    /// <summary>A problem here is a fault of the program; the tests read every block.</summary>
    private static Exercise Read(string file, string block) =>
        ExerciseFile.Read(file, Encoding.UTF8.GetBytes(ExerciseBlocks.Alone(block))).Value?.Single() ?? throw new InvalidDataException($"{file} holds a broken exercise: {block}");
}
