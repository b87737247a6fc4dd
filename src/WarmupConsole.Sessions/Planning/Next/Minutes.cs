using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Keeps the minutes of the plan within a tenth, by a key or a round more or less at a time.</summary>
internal static class Minutes
{
    private const double Tenth = 0.10;
    private const int FewestKeys = 3;
    private const int FewestRounds = 2;
    private const int MostKeys = 24;
    private const int MostRounds = 20;

    /// <summary>Rounds grow to so many times the usual number: longer, breath work tires.</summary>
    private const int MostGrowth = 2;

    internal static Draft Keep(Draft draft, List<string> unmet)
    {
        TimeSpan minutes = TimeSpan.FromMinutes(draft.Frame.Minutes);
        int direction = Direction(draft.Ready().Planned, minutes);
        bool isMoving = direction != 0;
        while (isMoving && Direction(draft.Ready().Planned, minutes) == direction) // never back again: a unit larger than the band would swing for ever
        {
            Draft? moved = Moved(draft, direction);
            isMoving = moved is not null;
            draft = moved ?? draft;
        }

        TimeSpan planned = draft.Ready().Planned;
        if (Direction(planned, minutes) != 0)
        {
            unmet.Add(NextPlanTexts.OffMinutes(planned, draft.Frame.Minutes));
        }

        return draft;
    }

    /// <summary>−1 when the plan must get shorter, 1 when longer, 0 when it is right.</summary>
    private static int Direction(TimeSpan planned, TimeSpan minutes) =>
        planned > minutes * (1 + Tenth) ? -1 : planned < minutes * (1 - Tenth) ? 1 : 0;

    /// <summary>Takes from the longest step, gives keys to the shortest one and rounds only when no ladder can grow; never a change that brings an error, or that changes nothing.</summary>
    private static Draft? Moved(Draft draft, int direction)
    {
        Warmup ready = draft.Ready();
        int errors = draft.Errors();
        return Enumerable.Range(0, ready.Steps.Count)
            .OrderBy(index => direction > 0 && !ready.Steps[index].Exercise.IsSung)
            .ThenBy(index => direction * ready.Steps[index].Planned.Ticks).ThenBy(index => index)
            .Where(index => draft.Steps[index].Answers.Count == 0)
            .Select(index => Moved(draft, ready.Steps[index], index, direction))
            .FirstOrDefault(moved => moved is not null && direction * moved.Ready().Planned.CompareTo(ready.Planned) > 0 && moved.Errors() <= errors);
    }

    private static Draft? Moved(Draft draft, WarmupStep ready, int index, int direction)
    {
        PlanStep? step = ready.Exercise.IsSung ? WithKeys(ready, direction) : WithRounds(ready, direction);
        DraftStep old = draft.Steps[index];
        string reason = direction < 0 ? NextPlanTexts.Trimmed(draft.Frame.Minutes) : NextPlanTexts.Extended(draft.Frame.Minutes);
        return step is null ? null : draft.With(index, (old with { Step = step }).Because(reason));
    }

    private static PlanStep? WithKeys(WarmupStep ready, int direction)
    {
        bool comesBack = ready.Plan.Keys.Shape is LadderShape.UpAndBack or LadderShape.DownAndBack;
        int keys = (comesBack ? (ready.Ladder.Rungs.Count + 1) / 2 : ready.Ladder.Rungs.Count) + direction;
        return keys is >= FewestKeys and <= MostKeys ? ready.Plan with { Keys = ready.Plan.Keys with { MostKeys = keys } } : null;
    }

    private static PlanStep? WithRounds(WarmupStep ready, int direction) =>
        ready.Rounds + direction is >= FewestRounds and int rounds && rounds <= Math.Min(MostRounds, MostGrowth * ready.Exercise.Rounds) ? ready.Plan with { Rounds = rounds } : null;
}
