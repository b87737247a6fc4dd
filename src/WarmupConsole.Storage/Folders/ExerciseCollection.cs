using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>Gathers exercises from several files; an id may be used only once among them all.</summary>
internal sealed class ExerciseCollection
{
    private readonly List<Exercise> exercises = [];
    private readonly List<FileProblem> problems = [];
    private readonly Dictionary<string, string> places = [];

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

    internal FileRead<IReadOnlyList<Exercise>> Finish() => problems.Count == 0 ? new(exercises, []) : new(null, problems);
}
