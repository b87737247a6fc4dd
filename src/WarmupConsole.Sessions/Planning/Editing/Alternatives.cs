using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Editing;

/// <summary>Exercises that could stand in a step's place.</summary>
public static class Alternatives
{
    /// <summary>Those of the same stage that share a purpose first, the most shared ones leading; then the others of the stage; then all that are left.</summary>
    public static IReadOnlyList<Exercise> Of(Exercise exercise, IEnumerable<Exercise> all)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(all);
        return
        [
            .. all.Where(other => other.Id != exercise.Id)
                .OrderBy(other => other.Stage == exercise.Stage ? 0 : 1)
                .ThenByDescending(other => Shared(exercise, other).Count())
                .ThenBy(other => other.Title, StringComparer.Ordinal),
        ];
    }

    /// <summary>What both train.</summary>
    public static IEnumerable<Purpose> Shared(Exercise exercise, Exercise other)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(other);
        return exercise.Purposes.Intersect(other.Purposes);
    }
}
