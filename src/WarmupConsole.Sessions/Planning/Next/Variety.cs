using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Exchanges two exercises for others of the same stage: the order stays a habit, the material does not.</summary>
internal static class Variety
{
    private const int Changes = 2;
    private const int DaysInWeek = 7;

    internal static Draft Bring(Draft draft, NextPlanInput input, List<string> unmet)
    {
        int week = input.Date.DayNumber / DaysInWeek;
        int changed = 0;
        foreach (int index in ByWeek(draft, week))
        {
            if (changed < Changes && Exchanged(draft, index, week) is { } exchanged)
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
        return free.Skip(week % Math.Max(1, free.Length)).Concat(free.Take(week % Math.Max(1, free.Length)))
            .OrderByDescending(index => draft.ExerciseOf(index).IsSung);
    }

    private static Draft? Exchanged(Draft draft, int index, int week)
    {
        int errors = draft.Errors();
        Exercise old = draft.ExerciseOf(index);
        Exercise[] others = [.. draft.Exercises.Values.Where(other => other.Stage == old.Stage && !draft.Uses(other.Id)).OrderBy(other => other.Id, StringComparer.Ordinal)];
        return others.Skip(week % Math.Max(1, others.Length)).Concat(others.Take(week % Math.Max(1, others.Length)))
            .OrderByDescending(other => other.Purposes.Intersect(old.Purposes).Count())
            .Select(other => draft.With(index, Instead(draft.Steps[index], old, other)))
            .FirstOrDefault(tried => HasWork(tried, index) && tried.Errors() <= errors);
    }

    private static DraftStep Instead(DraftStep step, Exercise old, Exercise other) => step with
    {
        Step = step.Step with { ExerciseId = other.Id, Tempo = null, Rounds = null, TalkSeconds = null, Because = [NextPlanTexts.InsteadOf(old)] },
    };

    private static bool HasWork(Draft draft, int index) =>
        draft.Ready(draft.Steps[index].Step) is var ready && (ready.Ladder.Rungs.Count > 0 || ready.Rounds > 0);
}
