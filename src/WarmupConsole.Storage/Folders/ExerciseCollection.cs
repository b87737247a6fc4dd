using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>Gathers exercises of the director's own from several files; an id may be used only once among them all and those of the program.</summary>
internal sealed class ExerciseCollection
{
    private readonly List<Exercise> exercises = [];
    private readonly List<FileProblem> problems = [];
    private readonly Dictionary<string, string> places = Catalogue.Exercises.Ids.ToDictionary(id => id, _ => Catalogue.Name);

    internal void Add(string place, FileRead<IReadOnlyList<Exercise>> read)
    {
        problems.AddRange(read.Problems);
        foreach (Exercise exercise in read.Value ?? [])
        {
            exercises.Add(exercise);
            if (!places.TryAdd(exercise.Id, place))
            {
                problems.Add(FileProblem.Whole(place, StorageTexts.SameExercise(exercise.Id, places[exercise.Id])));
            }
        }
    }

    /// <summary>Those of the program first.</summary>
    internal FileRead<ExerciseShelf> Finish() => problems.Count == 0 ? new(Catalogue.Exercises.And(exercises), []) : new(null, problems);
}
