using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.Storage.Plans;

/// <summary>What the names in a plan may refer to.</summary>
public sealed record PlanContext(ExerciseShelf Exercises, Choir Choir)
{
    /// <summary>With exercises that were read already.</summary>
    public PlanContext(IReadOnlyList<Exercise> exercises, Choir choir)
        : this(ExerciseShelf.Of(exercises), choir)
    {
    }
}
