using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Exchanges two exercises for others of the same stage: the order stays a habit, the material does not.</summary>
internal static class Variety
{
    private const int Changes = 2;
    private const int FewestKeys = 3;
    private const int DaysInWeek = 7;

    internal static Draft Bring(Draft draft, NextPlanInput input, List<string> unmet)
    {
        int changed = 0;
        foreach (int index in ByWeek(draft, Week(input)))
        {
            if (changed < Changes && Exchanged(draft, index, input) is { } exchanged)
            {
                (draft, changed) = (exchanged, changed + 1);
            }
        }

        if (changed < Changes)
        {
            unmet.Add(NextPlanTexts.TooFewChanges(changed));
        }

        return draft;
    }

    /// <summary>Steps that answer nothing: sung ones before the others, beginning at another one each week.</summary>
    private static IEnumerable<int> ByWeek(Draft draft, int week)
    {
        int[] free = [.. Enumerable.Range(0, draft.Steps.Count).Where(index => draft.Steps[index] is { Origin: not null, Answers.Count: 0 })];
        return Turned(free, week).OrderByDescending(index => draft.ExerciseOf(index).IsSung);
    }

    private static int Week(NextPlanInput input) => input.Date.DayNumber / DaysInWeek;

    /// <summary>The same things, beginning one further each week.</summary>
    private static IEnumerable<T> Turned<T>(T[] things, int week) =>
        Enumerable.Range(0, things.Length).Select(index => things[(index + week) % things.Length]);

    private static Draft? Exchanged(Draft draft, int index, NextPlanInput input)
    {
        int errors = draft.Errors();
        Exercise old = draft.ExerciseOf(index);
        HashSet<string> known = [.. input.Last.Steps.Select(step => step.ExerciseId)];
        IEnumerable<Exercise> others = draft.Exercises.Values
            .Where(other => other.Stage == old.Stage && !known.Contains(other.Id) && !draft.Uses(other.Id))
            .OrderBy(other => other.Id, StringComparer.Ordinal);
        return Turned([.. others], Week(input))
            .OrderByDescending(other => other.Purposes.Intersect(old.Purposes).Count())
            .Select(other => draft.With(index, Instead(draft.Steps[index], old, other)))
            .FirstOrDefault(tried => HasWork(tried, index, old) && tried.Errors() <= errors);
    }

    private static DraftStep Instead(DraftStep step, Exercise old, Exercise other) => step with
    {
        Step = step.Step with { ExerciseId = other.Id, Tempo = null, Rounds = null, TalkSeconds = null, Because = [NextPlanTexts.InsteadOf(old)] },
    };

    /// <summary>A wide pattern may fit this choir in a key or two only: that is no exchange for a ladder.</summary>
    private static bool HasWork(Draft draft, int index, Exercise old) =>
        draft.Ready(draft.Steps[index].Step) is var ready && (old.IsSung ? ready.Ladder.Rungs.Count >= FewestKeys : ready.Rounds > 0);
}
