using System.Collections;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Exercises in their order, each read when it is first asked for: a warm-up needs a dozen of them, and no director waits for the others. From any thread.</summary>
public sealed class ExerciseShelf : IReadOnlyList<Exercise>
{
    private readonly ShelvedExercise[] ordered;
    private readonly Dictionary<string, ShelvedExercise> byId = [];
    private readonly Lazy<Exercise[]> all;

    internal ExerciseShelf(IEnumerable<ShelvedExercise> exercises)
    {
        ordered = [.. exercises];
        foreach (ShelvedExercise exercise in ordered)
        {
            byId.TryAdd(exercise.Id, exercise);
        }

        all = new(() => [.. ordered.AsParallel().AsOrdered().Select(exercise => exercise.Exercise)]);
    }

    public int Count => ordered.Length;

    /// <summary>In the same order.</summary>
    public IEnumerable<string> Ids => ordered.Select(exercise => exercise.Id);

    public Exercise this[int index] => all.Value[index];

    /// <summary>Exercises that were read already.</summary>
    public static ExerciseShelf Of(IReadOnlyList<Exercise> exercises) =>
        exercises as ExerciseShelf ?? new(exercises.Select(ShelvedExercise.Of));

    /// <summary>These, and behind them others that were read already.</summary>
    public ExerciseShelf And(IReadOnlyList<Exercise> others) => others.Count == 0 ? this : new(ordered.Concat(others.Select(ShelvedExercise.Of)));

    /// <summary>The first one of that id, or null.</summary>
    public Exercise? Find(string id) => byId.GetValueOrDefault(id)?.Exercise;

    /// <summary>Those that a plan names, by id.</summary>
    public IReadOnlyDictionary<string, Exercise> In(Plan plan) =>
        plan.Steps.Select(step => step.ExerciseId).Distinct().Select(Find).OfType<Exercise>().ToDictionary(exercise => exercise.Id);

    public IEnumerator<Exercise> GetEnumerator() => all.Value.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
