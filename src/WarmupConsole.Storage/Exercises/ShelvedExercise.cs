using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Storage.Exercises;

/// <summary>An exercise that is read when it is first asked for. From any thread.</summary>
/// <param name="id">Known before.</param>
/// <param name="read">Reads it.</param>
internal sealed class ShelvedExercise(string id, Func<Exercise> read)
{
    private readonly Lazy<Exercise> exercise = new(read);

    internal string Id { get; } = id;

    internal Exercise Exercise => exercise.Value;

    internal static ShelvedExercise Of(Exercise exercise) => new(exercise.Id, () => exercise);
}
