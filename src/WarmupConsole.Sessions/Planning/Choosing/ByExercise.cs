namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>
/// The choices of a problem by their exercises, which are numbered from 0 by their first choices here. A plan has one choice of an exercise at most, and
/// those of one are much alike: a search passes them over together.
/// </summary>
internal sealed class ByExercise
{
    internal ByExercise(IReadOnlyList<Choice> choices)
    {
        Choices = [.. choices.Index().GroupBy(choice => choice.Item.Exercise, choice => choice.Index).Select(exercise => exercise.ToArray())];
        Of = new int[choices.Count];
        foreach ((int exercise, int[] members) in Choices.Index())
        {
            Array.ForEach(members, choice => Of[choice] = exercise);
        }
    }

    /// <summary>Indices of the choices of each exercise.</summary>
    internal int[][] Choices { get; }

    /// <summary>The exercise of each choice.</summary>
    internal int[] Of { get; }
}
