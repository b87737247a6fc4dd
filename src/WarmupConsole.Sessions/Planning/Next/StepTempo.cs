using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>The tempo of an exercise tonight: quick ones that were sung lately grow quicker step by step, and stay back on a tired evening or in the week of a concert.</summary>
internal static class StepTempo
{
    private const int GrowthMilliBpm = 4000;

    /// <summary>Null for the exercise's own.</summary>
    internal static Tempo? For(Exercise exercise, NextPlanInput input, History history, SeasonTarget season)
    {
        bool mayGrow = exercise.IsSung && exercise.Purposes.Contains(Purpose.Quick) && season.Phase != SeasonPhase.ConcertWeek && input.Tonight.Energy != Energy.Low;
        if (!mayGrow || !history.IsInLast(exercise.Id) || IsMarked(exercise, input))
        {
            return null;
        }

        Tempo last = input.Last!.Steps.First(step => step.ExerciseId == exercise.Id).Tempo ?? exercise.Tempo.Default;
        Tempo grown = Tempo.Clamp(Math.Min(last.MilliBeatsPerMinute + GrowthMilliBpm, exercise.Tempo.Quickest.MilliBeatsPerMinute));
        return grown == exercise.Tempo.Default ? null : grown;
    }

    /// <summary>What went wrong last time is not asked for more quickly.</summary>
    private static bool IsMarked(Exercise exercise, NextPlanInput input) => input.Review is { } review && review.Marks.Any(mark =>
        mark is { Kind: not null, IsPraise: false } && review.Steps.FirstOrDefault(step => step.Step == mark.Step)?.ExerciseId == exercise.Id);
}
