using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Exchanges two exercises for others of the same stage: the order stays a habit, the material does not.</summary>
internal static class Variety
{
    private const int Changes = 2;
    private const int FewestKeys = 3;
    private const int DaysInWeek = 7;

    /// <summary>Semitones.</summary>
    private const int MinorThird = 3;

    /// <summary>What it takes to teach a line that nobody has sung yet.</summary>
    private const int NewTalkSeconds = 60;

    internal static Draft Bring(Draft draft, NextPlanInput input, List<string> unmet)
    {
        int changed = 0;
        foreach (int index in ByWeek(draft, Week(input)))
        {
            if (changed < Changes && Exchanged(draft, index) is { } exchanged)
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

    /// <summary>Steps that answer nothing: those without a reason of their own first, sung ones before the others, beginning at another one each week.</summary>
    private static IEnumerable<int> ByWeek(Draft draft, int week)
    {
        int[] free = [.. Enumerable.Range(0, draft.Steps.Count).Where(index => draft.Steps[index] is { Origin: not null, Answers.Count: 0 })];
        return Turned(free, week).OrderBy(index => draft.Steps[index].IsSettled).ThenByDescending(index => draft.ExerciseOf(index).IsSung);
    }

    private static int Week(NextPlanInput input) => input.Date.DayNumber / DaysInWeek;

    /// <summary>The same things, beginning one further each week.</summary>
    private static IEnumerable<T> Turned<T>(T[] things, int week) =>
        Enumerable.Range(0, things.Length).Select(index => things[(index + week) % things.Length]);

    private static Draft? Exchanged(Draft draft, int index)
    {
        Exercise old = draft.ExerciseOf(index);
        HashSet<string> known = [.. draft.Input.Last.Steps.Select(step => step.ExerciseId)];
        IEnumerable<Exercise> others = draft.Exercises.Values
            .Where(other => other.Stage == old.Stage && !known.Contains(other.Id) && !draft.Uses(other.Id) && HasSpanOf(old, other))
            .OrderBy(other => other.Id, StringComparer.Ordinal);
        Draft[] tries =
        [
            .. Turned([.. others], Week(draft.Input))
                .OrderByDescending(other => other.Purposes.Intersect(old.Purposes).Count())
                .Select(other => draft.With(index, Instead(draft.Steps[index], old, other, draft.Input)))
                .Where(tried => HasWork(tried, index, old)),
        ];
        return tries.FirstOrDefault(tried => tried.IsNoWorseThan(draft, PlanSeverity.Hint)) ?? tries.FirstOrDefault(tried => tried.IsNoWorseThan(draft, PlanSeverity.Warning));
    }

    /// <summary>What a ladder asks of the voices follows from the lowest and the highest note, so these stay about where they were.</summary>
    private static bool HasSpanOf(Exercise old, Exercise other)
    {
        if (old.Pattern is null || other.Pattern is null)
        {
            return old.Pattern == other.Pattern;
        }

        ExerciseDemands before = ExerciseDemands.Of(old.Pattern, old.Mode);
        ExerciseDemands after = ExerciseDemands.Of(other.Pattern, other.Mode);
        return Math.Abs(after.Low.Semitones - before.Low.Semitones) <= MinorThird && Math.Abs(after.High.Semitones - before.High.Semitones) <= MinorThird;
    }

    private static DraftStep Instead(DraftStep step, Exercise old, Exercise other, NextPlanInput input)
    {
        int? talk = other.Stage == Stage.Sung && !input.IsKnown(other.Id) ? Math.Max(NewTalkSeconds, other.TalkSeconds) : null;
        PlanStep exchanged = step.Step with { ExerciseId = other.Id, Tempo = null, LastTempo = null, Rounds = null, TalkSeconds = talk };
        DraftStep instead = (step with { Step = exchanged }).OnlyBecause(NextPlanTexts.InsteadOf(old, [.. other.Purposes.Intersect(old.Purposes)]));
        return talk is { } seconds ? instead.Because(NextPlanTexts.NewToChoir(seconds)) : instead;
    }

    /// <summary>A pattern may fit this choir in a key or two only, or leave parts out that it needs: that is no exchange for a ladder.</summary>
    private static bool HasWork(Draft draft, int index, Exercise old) => draft.Ready(draft.Steps[index].Step) is var ready
        && (old.IsSung ? ready.Ladder.Rungs.Count >= FewestKeys && Together.IsKeptIn(ready) : ready.Rounds > 0);
}
